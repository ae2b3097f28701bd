using System.Collections.Immutable;
using DayBrief.Units;

namespace DayBrief.Days;

/// <summary>Prescribed heat and moisture fluxes at the ground, linear between its times, none outside them.</summary>
public sealed class FluxSeries
{
    /// <summary>A series.</summary>
    /// <param name="points">Its points.</param>
    /// <exception cref="ArgumentException">Fewer than two points, or times that do not rise.</exception>
    public FluxSeries(IEnumerable<FluxPoint> points)
    {
        Points = [.. points];
        if (Points.Length < 2)
            throw new ArgumentException("A flux series needs two points or more.", nameof(points));
        for (var i = 1; i < Points.Length; i++)
        {
            if (Points[i].Time <= Points[i - 1].Time)
                throw new ArgumentException($"Times must rise: point {i + 1} ({Points[i].Time:O}) does not.", nameof(points));
        }
    }

    /// <summary>The points in order of time.</summary>
    public ImmutableArray<FluxPoint> Points { get; }

    /// <summary>Fluxes at an instant; null outside the series.</summary>
    public FluxPoint? At(DateTimeOffset time)
    {
        if (time < Points[0].Time || time > Points[^1].Time)
            return null;
        var i = 1;
        while (i < Points.Length - 1 && Points[i].Time < time)
            i++;
        var (before, after) = (Points[i - 1], Points[i]);
        var share = (time - before.Time) / (after.Time - before.Time);
        return new(
            time,
            before.SensibleWm2 + (share * (after.SensibleWm2 - before.SensibleWm2)),
            before.LatentWm2 + (share * (after.LatentWm2 - before.LatentWm2)));
    }
}

/// <summary>Fluxes at one instant, W/m², upwards positive.</summary>
/// <param name="Time">The instant.</param>
/// <param name="SensibleWm2">Sensible heat.</param>
/// <param name="LatentWm2">Latent heat.</param>
public readonly record struct FluxPoint(DateTimeOffset Time, double SensibleWm2, double LatentWm2)
{
    /// <summary>Sensible heat.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside −500 to 1500.</exception>
    public double SensibleWm2 { get; } = Guard.Finite(SensibleWm2, -500, 1500);

    /// <summary>Latent heat.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside −500 to 1500.</exception>
    public double LatentWm2 { get; } = Guard.Finite(LatentWm2, -500, 1500);
}
