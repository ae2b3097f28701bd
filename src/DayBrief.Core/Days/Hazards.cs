using DayBrief.Reports;
using DayBrief.Units;

namespace DayBrief.Days;

/// <summary>Which hazards a day gives cause for, most serious first. None without a cause.</summary>
/// <remarks>Thresholds that have a public source name it; the others are common practice, no source. Limits of the site
/// and of the pilot come before all of them.</remarks>
public static class Hazards
{
    /// <summary>Wind at the ground from which a brief mentions it: 15 kt. Common practice, no source.</summary>
    internal const double SurfaceWindKt = 15;

    /// <summary>[FAA-25] ch. 11: gliders and light aircraft show at least 0.2 V_S0 across the runway, 8 kt at 40 kt.</summary>
    internal const double CrosswindKt = 8;

    /// <summary>Cloud base below which a brief warns: 2,000 ft. Common practice, no source.</summary>
    internal const double LowCloudFt = 2000;

    /// <summary>[FAA-13A] ch. 10: a landing field is chosen by 1,500 ft, so tops close above leave little time.</summary>
    internal const double LowTopFt = 2000;

    /// <summary>[AIM] 8-1-2: oxygen is advised by day from 10,000 ft.</summary>
    internal const double OxygenFt = 10000;

    /// <summary>Density altitude above the field's own height that is worth a line: 1,500 ft. Common practice, no source.</summary>
    internal const double DensityExcessFt = 1500;

    /// <summary>[FAA-13A] ch. 9, table of the K index: from 20 on showers and thunder become more and more likely.</summary>
    internal const double ThunderKIndex = 20;

    /// <summary>Energy worth a warning even under a lid: 500 J/kg. Common practice, no source.</summary>
    internal const double ThunderCapeJkg = 500;

    private const double HeatC = 30;
    private const double ColdC = 5;

    /// <summary>The hazards of a day.</summary>
    public static IReadOnlyList<Hazard> Of(Brief brief) =>
        [.. All(brief).OfType<Hazard>().OrderBy(hazard => hazard.Kind)];

    private static IEnumerable<Hazard?> All(Brief brief)
    {
        var day = brief.Day;
        var flyable = day.Times.FirstUsable is not null;
        yield return Observed(brief, weather => weather.IsThunderstorm)
            ? new(HazardKind.Thunder) { About = brief.Observation!.Station }
            : At(HazardKind.Thunder, day.Cloud.Thunder);
        yield return Forecast(brief);
        yield return ThunderInStore(brief);
        yield return At(HazardKind.Showers, day.Cloud.Thunder is null ? day.Cloud.Showers : null);
        yield return At(HazardKind.Overdevelopment, day.Cloud.Thunder is null && day.Cloud.Showers is null ? day.Cloud.Overdevelopment : null);
        yield return flyable && day.Cloud.SpreadOut ? new(HazardKind.SpreadOut) : null;
        yield return SurfaceWind(brief);
        yield return Crosswind(brief);
        yield return day.Wind is { TooMuch: true } aloft ? new(HazardKind.WindAloft, aloft.Mean.Speed.MetresPerSecond) : null;
        yield return day.Wind?.LowLevelMaximum is { } jet ? new(HazardKind.WindGradient, jet.Speed.MetresPerSecond) : null;
        yield return day.Cloud.FirstBase is { } low && low.Feet < LowCloudFt ? new(HazardKind.LowCloud, low.Metres) : null;
        yield return flyable && brief.UsableTop is { } top && top.Feet < LowTopFt ? new(HazardKind.LowTops, top.Metres) : null;
        yield return Icing(brief);
        yield return Oxygen(brief);
        yield return DensityAltitudeAt(brief);
        yield return brief.MaxTemperature is { Celsius: >= HeatC } hot ? new(HazardKind.Heat, hot.Celsius) : null;
        yield return brief.MaxTemperature is { Celsius: <= ColdC } cold ? new(HazardKind.Cold, cold.Celsius) : null;
        yield return flyable && day.ThermalType.Kind == ThermalKind.ShortLived ? new(HazardKind.SuddenEnd) : null;
        yield return LastLight(brief);
    }

    private static Hazard? At(HazardKind kind, DateTimeOffset? from) => from is null ? null : new(kind) { From = from };

    /// <summary>Forcing that a single column cannot know (fronts, hills, sea breezes) may still set it free.</summary>
    private static Hazard? ThunderInStore(Brief brief) =>
        brief.Day.Cloud.Thunder is null
        && (brief.Ascent.KIndex >= ThunderKIndex || brief.Ascent.Energy?.CapeJkg >= ThunderCapeJkg)
            ? new(HazardKind.ThunderInStore, brief.Ascent.KIndex)
            : null;

    private static bool Observed(Brief brief, Func<PresentWeather, bool> weather) =>
        brief.Observation?.Conditions.Weather.Any(weather) ?? false;

    /// <summary>The first group of the TAF between sunrise and sunset that names thunder, or gusts or wind worth a mention.</summary>
    private static Hazard? Forecast(Brief brief)
    {
        var (noon, sun) = (brief.Day.Sun.Noon, brief.Day.Sun);
        var groups = brief.Forecast?.Groups
            .Where(group => group.Conditions.Weather.Any(weather => weather.IsThunderstorm)
                || (group.Conditions.Wind is { } wind && (wind.Gust ?? wind.Speed)?.Knots >= SurfaceWindKt + 5))
            .Select(group => (group, From: group.From?.NearestTo(noon), To: group.To?.NearestTo(noon)))
            .Where(entry => !(entry.From > sun.Sunset) && !(entry.To < sun.Sunrise))
            .ToArray() ?? [];
        return groups.Length > 0
            ? new(HazardKind.Forecast) { From = groups[0].From, About = $"{brief.Forecast!.Station}: {groups[0].group.Raw}" }
            : null;
    }

    /// <summary>The strongest of the observed gust, the observed wind and the ascent's wind at the ground.</summary>
    private static Hazard? SurfaceWind(Brief brief) =>
        brief.Observation?.Conditions.Wind is { } observed && (observed.Gust ?? observed.Speed) is { } reported
            ? reported.Knots >= SurfaceWindKt
                ? new(HazardKind.SurfaceWind, reported.MetresPerSecond) { About = brief.Observation.Station }
                : null
            : brief.WindAt(Height.FromMetres(10)) is { } wind && wind.Speed.Knots >= SurfaceWindKt
            ? new(HazardKind.SurfaceWind, wind.Speed.MetresPerSecond)
            : null;

    private static Hazard? Crosswind(Brief brief) =>
        RunwayWind.Best(brief) is { } best && best.Across.Knots >= CrosswindKt
            ? new(HazardKind.Crosswind, best.Across.MetresPerSecond) { About = best.Runway.Designator }
            : null;

    private static Hazard? Icing(Brief brief) =>
        brief.FreezingLevel is { } freezing && brief.UsableTop is { } top && freezing < top
            ? new(HazardKind.Icing, freezing.Metres)
            : null;

    private static Hazard? Oxygen(Brief brief) =>
        brief.UsableTop is { } top && (brief.Site.Elevation + top).Feet >= OxygenFt
            ? new(HazardKind.Oxygen, (brief.Site.Elevation + top).Metres)
            : null;

    private static Hazard? DensityAltitudeAt(Brief brief) =>
        brief.DensityAltitude is { } thin && thin.Feet - brief.Site.Elevation.Feet >= DensityExcessFt
            ? new(HazardKind.DensityAltitude, thin.Metres)
            : null;

    private static Hazard? LastLight(Brief brief) =>
        brief.Day.Times.Last is { } last && brief.Day.Sun.Sunset is { } sunset && sunset - last < TimeSpan.FromMinutes(90)
            ? new(HazardKind.LastLight) { From = sunset }
            : null;
}
