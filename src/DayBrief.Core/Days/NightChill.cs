using DayBrief.Thermodynamics;

namespace DayBrief.Days;

/// <summary>What the ground takes from the lowest air between the ascent and the first heating of the day.</summary>
/// <remarks>Sensible heat of −20 W/m² on a clear night, a third of it under overcast, between textbook values of 10 to 40
/// [Stull1988]; it is lost from air whose share falls off as e^(−z/100 m), the depth of a young night inversion. Both are
/// common practice. The day's heating first pays this back.</remarks>
internal static class NightChill
{
    /// <summary>Height over which the chill falls to a third, m.</summary>
    public const double ScaleM = 100;

    /// <summary>The greatest loss of heat to the ground that is believed, W/m².</summary>
    public const double MostWm2 = 40;

    private const double ClearWm2 = 20;
    private const double DensityHeat = 1.2 * Air.SpecificHeat;

    /// <summary>Heat lost from the ascent (or the evening, if later) to the first step, K m; 0 for an ascent after it.</summary>
    public static double Before(DateTimeOffset first, DateTimeOffset? ascent, BoundaryLayer.SunDay sun, double oktas)
    {
        var evening = sun.Sunset?.AddDays(-1) ?? first;
        if (ascent is not { } at)
            return 0;
        var seconds = Math.Max(0, (first - (at > evening ? at : evening)).TotalSeconds);
        return ClearWm2 * (1 - (oktas / 12)) / DensityHeat * seconds;
    }
}
