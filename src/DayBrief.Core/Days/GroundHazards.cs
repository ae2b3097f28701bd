using DayBrief.BoundaryLayer;
using DayBrief.Units;

namespace DayBrief.Days;

/// <summary>Cautions for the launch point: thin air, heat, cold, ultraviolet light, the end of the day.</summary>
internal static class GroundHazards
{
    /// <summary>Density altitude above the field's own height that is worth a line: 1,500 ft. Common practice, no source.</summary>
    public const double DensityExcessFt = 1500;

    /// <summary>Heat worth a line: 30 °C. Common practice, no source.</summary>
    public const double HeatC = 30;

    /// <summary>Cold worth a line: no more than 5 °C. Common practice, no source.</summary>
    public const double ColdC = 5;

    /// <summary>Thermals that last until so shortly before sunset tempt to land late: 60 min. Common practice, no source.</summary>
    public const double LastLightMinutes = 60;

    public static IEnumerable<Hazard?> Of(Brief brief)
    {
        yield return ThinAir(brief);
        yield return Heat(brief);
        yield return brief.MaxTemperature is { Celsius: <= ColdC } cold ? new(HazardKind.Cold, cold.Celsius) : null;
        yield return Ultraviolet(brief);
        yield return LastLight(brief);
    }

    private static Hazard? ThinAir(Brief brief)
    {
        if (!(brief.DensityAltitude is { } thin && Excess(thin) >= DensityExcessFt))
            return null;
        var when = Daylight.When(brief, step =>
            step.SurfaceTemperatureC is { } celsius && brief.DensityAltitudeAt(Temperature.FromCelsius(celsius)) is { } then && Excess(then) >= DensityExcessFt);
        return new(HazardKind.DensityAltitude, thin.Metres) { From = when?.From, To = when?.To };

        double Excess(Altitude density) => density.Feet - brief.Site.Elevation.Feet;
    }

    private static Hazard? Heat(Brief brief)
    {
        if (brief.MaxTemperature is not { Celsius: >= HeatC } hot)
            return null;
        var when = Daylight.When(brief, step => step.SurfaceTemperatureC >= HeatC);
        return new(HazardKind.Heat, hot.Celsius) { From = when?.From, To = when?.To };
    }

    /// <summary>The clear-sky index of the day's highest sun, and the time over which it asks for protection.</summary>
    private static Hazard? Ultraviolet(Brief brief)
    {
        double Index(DateTimeOffset at) => UvIndex.ClearSky(Sun.At(brief.Site.Position, at).CosZenith);
        var highest = Index(brief.Day.Sun.Noon);
        if (highest < UvIndex.ProtectionFrom)
            return null;
        var when = Daylight.When(brief, step => Index(step.Time) >= UvIndex.ProtectionFrom);
        return new(HazardKind.Ultraviolet, highest) { From = when?.From, To = when?.To };
    }

    private static Hazard? LastLight(Brief brief) =>
        brief.Day.Times.Last is { } last && brief.Day.Sun.Sunset is { } sunset && (sunset - last).TotalMinutes < LastLightMinutes
            ? new(HazardKind.LastLight) { From = last, To = sunset }
            : null;
}
