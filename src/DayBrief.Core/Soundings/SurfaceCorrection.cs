using DayBrief.Thermodynamics;
using DayBrief.Units;

namespace DayBrief.Soundings;

/// <summary>Corrects the lowest layer of an ascent to what was observed at the surface at about the same time.</summary>
public static class SurfaceCorrection
{
    /// <summary>The ascent with the observed temperature and dew point at its surface.</summary>
    /// <remarks>[FAA-13A] chapter 9: the sounding's lowest layer is corrected to the observed surface temperature. Where the
    /// observed air is warmer than the ascent, everything below the level at which its dry adiabat meets the ascent is on
    /// that adiabat; where it is colder, the cold layer ends at the next level. Dew points above the temperature are
    /// brought down to it.</remarks>
    /// <param name="sounding">The ascent.</param>
    /// <param name="temperature">Observed temperature.</param>
    /// <param name="dewPoint">Observed dew point; null leaves the ascent's.</param>
    public static Sounding Apply(Sounding sounding, Temperature temperature, Temperature? dewPoint)
    {
        var surface = sounding.Surface;
        var difference = temperature - surface.Temperature!.Value;
        var met = false;
        var levels = sounding.Levels.Select(level => Corrected(level, surface, temperature, dewPoint, ref met)).ToArray();
        return new Sounding
        {
            Source = sounding.Source,
            Levels = [.. levels],
            WindsByHeight = sounding.WindsByHeight,
            Remarks =
            [
                .. sounding.Remarks,
                new Remark(
                    Severity.Info,
                    "surface-corrected",
                    $"The lowest layer is corrected to the observation at the surface ({difference.Kelvins:+0.0;−0.0} °C against the ascent)."),
            ],
        };
    }

    private static SoundingLevel Corrected(
        SoundingLevel level, SoundingLevel surface, Temperature temperature, Temperature? dewPoint, ref bool met)
    {
        if (level.Pressure > surface.Pressure || level.Temperature is not { } own || met)
            return level;
        if (level == surface)
            return level with { Temperature = temperature, DewPoint = Lower(dewPoint ?? surface.DewPoint, temperature) };
        var lifted = DryAdiabat.Moved(temperature, surface.Pressure, level.Pressure);
        met = lifted <= own;
        return met ? level : level with { Temperature = lifted, DewPoint = Lower(level.DewPoint, lifted) };
    }

    private static Temperature? Lower(Temperature? dewPoint, Temperature temperature) =>
        dewPoint is { } known && known > temperature ? temperature : dewPoint;
}
