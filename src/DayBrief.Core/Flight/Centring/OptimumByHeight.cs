using DayBrief.Flight.Gliders;
using DayBrief.Flight.Thermals;
using DayBrief.Units;

namespace DayBrief.Flight.Centring;

/// <summary>A part of the layer.</summary>
public enum LayerPart
{
    /// <summary>Near a fifth of the depth.</summary>
    Low,

    /// <summary>Half of it.</summary>
    Middle,

    /// <summary>Three quarters of it.</summary>
    Top,
}

/// <summary>Best bank and speed at one height in the thermal, within limits.</summary>
/// <param name="Height">Height above the ground.</param>
/// <param name="RadiusM">Radius of the updraft there, m.</param>
/// <param name="CoreUpdraftMs">Updraft in its centre there, m/s.</param>
/// <param name="Optimum">Best circle there, at whole degrees of bank; null if none climbs.</param>
public sealed record OptimumByHeight(Height Height, double RadiusM, double CoreUpdraftMs, CirclingOptimum? Optimum)
{
    private static readonly double[] Shares = [0.2, 0.5, 0.75];

    /// <summary>Where that is.</summary>
    public LayerPart Part { get; init; }

    /// <summary>Low, middle and top: at a fifth, a half and three quarters of the depth, below which Allen's updraft carries.</summary>
    /// <param name="thermal">The thermal.</param>
    /// <param name="glider">The glider.</param>
    /// <param name="limits">No height below the least, no bank beyond the steepest, no speed below the margin; null for none but the
    /// usual margin.</param>
    /// <param name="top">Nothing above it; null for all of the layer.</param>
    public static IReadOnlyList<OptimumByHeight> LowMiddleTop(Thermal thermal, Glider glider, CircleLimits? limits = null, Height? top = null)
    {
        ArgumentNullException.ThrowIfNull(thermal);
        ArgumentNullException.ThrowIfNull(glider);
        var least = limits?.LeastHeight.Metres ?? 0;
        double[] heights = [.. Shares.Select(share => share * thermal.Depth.Metres)];
        heights[0] = Math.Max(heights[0], least);
        return
        [
            .. heights.Select((metres, i) => (Metres: metres, Part: (LayerPart)i))
                .Where(each => each.Metres >= least && each.Metres <= (top?.Metres ?? each.Metres) && (each.Part == LayerPart.Low || each.Metres > heights[0]))
                .Select(each => At(thermal, glider, Height.FromMetres(each.Metres), limits) with { Part = each.Part }),
        ];
    }

    /// <summary>At one height.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Height below 0.</exception>
    public static OptimumByHeight At(Thermal thermal, Glider glider, Height height, CircleLimits? limits = null)
    {
        ArgumentNullException.ThrowIfNull(thermal);
        limits ??= new();
        var (updraft, marginPct) = (thermal.At(height), limits.MarginPctAt(height));
        var optimum = CirclingOptimum.Find(glider, updraft.UpdraftMs, limits, marginPct);
        var whole = CirclingOptimum.BestAt(glider, updraft.UpdraftMs, Math.Min(Math.Round(optimum.Circle.BankDeg), Math.Floor(limits.SteepestBankDeg)), marginPct);
        return new(height, updraft.RadiusM, updraft.CentreUpdraftMs, optimum.ClimbMs > 0 ? optimum with { Circle = whole } : null);
    }
}
