using DayBrief.Units;

namespace DayBrief.Flight.Thermals;

/// <summary>How a thermal leans in shear and how a circling glider is carried across it.</summary>
/// <remarks>
/// The column drifts with the wind at half its depth. Air that rises at w through a wind that differs by u from that drift
/// traces an axis of slope u/w (drift and tilt kept apart; [FAA-13A] ch. 9 says that columns lean in wind and distort in
/// shear). A glider that circles goes with the air at its height but rises slower by its sink, so it is carried across the
/// axis at u·sink/w. The slope is held to 1 (45°): beyond that a column is torn rather than leaning. A first-order model.
/// </remarks>
public static class Lean
{
    internal const double SteepestSlope = 1;

    /// <summary>Share of the lean of a plume from a fixed source that a column has: circles drift with 95 % of the wind at their height where
    /// such a plume would give 57 % (flight recorders, given half), so (100 − 95)/(100 − 57) of it.</summary>
    public const double HeldShare = 0.12;

    /// <summary>Wind at a height less the thermal's own drift, m/s along the shear.</summary>
    public static double RelativeWindMs(Thermal thermal, Height height)
    {
        ArgumentNullException.ThrowIfNull(thermal);
        return thermal.WindShearMsPerKm / 1000 * (height.Metres - (0.5 * thermal.Depth.Metres));
    }

    /// <summary>Slope of the axis at a height: metres along the shear per metre of height, −1 to 1; null where nothing rises.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Height negative.</exception>
    public static double? Slope(Thermal thermal, Height height)
    {
        var relative = RelativeWindMs(thermal, height);
        var centre = thermal.At(height).CentreUpdraftMs;
        return centre <= 0 ? null : Math.Clamp(relative / centre, -SteepestSlope, SteepestSlope);
    }

    /// <summary>Ground distance that a column from a fixed source drifts while its air rises, m: wind·height/updraft.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Updraft not above 0.</exception>
    public static double DriftM(Speed wind, Height height, Speed updraft) =>
        wind.MetresPerSecond * height.Metres / Guard.Finite(updraft.MetresPerSecond, double.Epsilon, name: nameof(updraft));
}
