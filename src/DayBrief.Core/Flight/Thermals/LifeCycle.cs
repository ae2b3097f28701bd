using DayBrief.Units;

namespace DayBrief.Flight.Thermals;

/// <summary>Birth, feeding and death of a thermal: it arrives from below, is fed for a while and dies from below.</summary>
/// <remarks>
/// No source: a model of our own. Air released at the ground rises with the layer's strongest mean updraft (0.4577·w* at 0.227
/// of the depth, [Allen2006] equation 11), so lift reaches a height later and ends there later. At each height it grows during
/// the first fifth of its life there and fades during the last fifth. A glider that climbs stays with young air longer.
/// </remarks>
public static class LifeCycle
{
    /// <summary>Share of the life in which the updraft grows, and again in which it fades.</summary>
    internal const double RampShare = 0.2;

    /// <summary>Speed at which birth and death travel upwards, m/s.</summary>
    public static double RiseMs(Thermal thermal)
    {
        ArgumentNullException.ThrowIfNull(thermal);
        return 0.4577 * thermal.WStarMs;
    }

    /// <summary>Strength, 0 to 1, at a height and a time after lift began at the thermal's own height.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Height negative.</exception>
    public static double Strength(Thermal thermal, Height height, TimeSpan sinceLiftBegan)
    {
        ArgumentNullException.ThrowIfNull(thermal);
        if (thermal.Lifetime is not { } lifetime)
            return 1;

        var rise = (Guard.Finite(height.Metres, 0, name: nameof(height)) - thermal.Height.Metres) / RiseMs(thermal);
        return Strength((sinceLiftBegan.TotalSeconds - rise) / lifetime.TotalSeconds);
    }

    internal static double Strength(double ageShare) => Math.Clamp(Math.Min(ageShare, 1 - ageShare) / RampShare, 0, 1);
}
