using DayBrief.Flight.Gliders;
using DayBrief.Flight.Thermals;
using DayBrief.Units;

namespace DayBrief.Flight.Centring;

/// <summary>Best bank and speed at one height in the thermal.</summary>
/// <param name="Height">Height above the ground.</param>
/// <param name="RadiusM">Radius of the updraft there, m.</param>
/// <param name="CoreUpdraftMs">Updraft in its centre there, m/s.</param>
/// <param name="Optimum">Best circle there; null if none climbs.</param>
public sealed record OptimumByHeight(Height Height, double RadiusM, double CoreUpdraftMs, CirclingOptimum? Optimum)
{
    private static readonly double[] Shares = [0.2, 0.5, 0.75];

    /// <summary>Low, middle and top: at a fifth, a half and three quarters of the depth, below which Allen's updraft carries.</summary>
    public static IReadOnlyList<OptimumByHeight> LowMiddleTop(Thermal thermal, Glider glider)
    {
        ArgumentNullException.ThrowIfNull(thermal);
        ArgumentNullException.ThrowIfNull(glider);
        return [.. Shares.Select(share => At(thermal, glider, Height.FromMetres(share * thermal.Depth.Metres)))];
    }

    /// <summary>At one height.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Height below 0.</exception>
    public static OptimumByHeight At(Thermal thermal, Glider glider, Height height)
    {
        ArgumentNullException.ThrowIfNull(thermal);
        var updraft = thermal.At(height);
        var optimum = CirclingOptimum.Find(glider, updraft.UpdraftMs);
        return new(height, updraft.RadiusM, updraft.CentreUpdraftMs, optimum.ClimbMs > 0 ? optimum : null);
    }
}
