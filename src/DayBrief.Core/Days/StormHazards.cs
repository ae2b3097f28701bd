using DayBrief.Reports;

namespace DayBrief.Days;

/// <summary>Cautions of thunder, showers and tall cloud.</summary>
internal static class StormHazards
{
    /// <summary>[FAA-13A] ch. 9, table of the K index: from 20 on showers and thunder become more and more likely.</summary>
    public const double ThunderKIndex = 20;

    /// <summary>Energy worth a warning even under a lid: 500 J/kg. Common practice, no source.</summary>
    public const double ThunderCapeJkg = 500;

    /// <summary>Forecast gusts worth a line of their own: 20 kt. Common practice, no source.</summary>
    public const double ForecastGustKt = 20;

    public static IEnumerable<Hazard?> Of(Brief brief)
    {
        var thunder = Thunder(brief);
        var showers = thunder is null ? Showers(brief) : null;
        var tall = thunder is null && showers is null ? Tall(brief) : null;
        yield return thunder;
        yield return Forecast(brief);
        yield return InStore(brief);
        yield return showers;
        yield return tall;
        yield return Spread(brief);
        yield return thunder is null && showers is null ? Downdraught(brief, tall) : null;
    }

    private static Hazard? Thunder(Brief brief) =>
        Reported(brief, weather => weather.IsThunderstorm, HazardKind.Thunder) ?? From(HazardKind.Thunder, brief.Day.Cloud.Thunder);

    private static Hazard? Showers(Brief brief) =>
        Reported(brief, IsShower, HazardKind.Showers)
        ?? From(HazardKind.Showers, brief.Day.Cloud.Showers)
        ?? ForecastTimes.Of(brief).Where(entry => entry.Group.Conditions.Weather.Any(IsShower))
            .Select(entry => new Hazard(HazardKind.Showers) { From = entry.From, To = entry.To, Source = WindSource.Forecast, About = brief.Forecast!.Station })
            .FirstOrDefault();

    private static Hazard? Tall(Brief brief) =>
        brief.Observation is { } report && report.Conditions.Clouds.Any(cloud => cloud.Convective is not null)
            ? new(HazardKind.Overdevelopment) { Source = WindSource.Reported, About = report.Station }
            : From(HazardKind.Overdevelopment, brief.Day.Cloud.Overdevelopment);

    /// <summary>When it spreads is not known.</summary>
    private static Hazard? Spread(Brief brief) =>
        brief.Day.Times.FirstUsable is not null && brief.Day.Cloud.SpreadOut ? new(HazardKind.SpreadOut) : null;

    /// <summary>[FAA-13A] ch. 9: air falls beside and below large cumulus, and where they dissolve. Showers and thunder say it
    /// themselves.</summary>
    private static Hazard? Downdraught(Brief brief, Hazard? tall) =>
        tall is not null
            ? new(HazardKind.Downdraught, brief.Day.Cloud.Base?.Metres) { From = tall.From, About = "tall" }
            : Spread(brief) is not null ? new(HazardKind.Downdraught, brief.Day.Cloud.Base?.Metres) { About = "spread" } : null;

    private static Hazard? From(HazardKind kind, DateTimeOffset? from) => from is null ? null : new(kind) { From = from };

    private static Hazard? Reported(Brief brief, Func<PresentWeather, bool> weather, HazardKind kind) =>
        brief.Observation is { } report && report.Conditions.Weather.Any(weather)
            ? new(kind) { Source = WindSource.Reported, About = report.Station }
            : null;

    private static bool IsShower(PresentWeather weather) => weather.Descriptor == "SH" && weather.IsPrecipitation;

    /// <summary>Forcing that a single column cannot know (fronts, hills, sea breezes) may still set it free.</summary>
    private static Hazard? InStore(Brief brief) =>
        brief.Day.Cloud.Thunder is null
        && (brief.Ascent.KIndex >= ThunderKIndex || brief.Ascent.Energy?.CapeJkg >= ThunderCapeJkg)
            ? new(HazardKind.ThunderInStore, brief.Ascent.KIndex)
            : null;

    /// <summary>The first group of the TAF in daylight that names thunder or its cloud, or gusts or wind worth a mention.</summary>
    private static Hazard? Forecast(Brief brief) =>
        ForecastTimes.Of(brief).Where(entry => Matters(entry.Group.Conditions))
            .Select(entry => new Hazard(HazardKind.Forecast)
            {
                From = entry.From,
                To = entry.To,
                Source = WindSource.Forecast,
                About = $"{brief.Forecast!.Station}: {entry.Group.Raw}",
            })
            .FirstOrDefault();

    private static bool Matters(AerodromeConditions conditions) =>
        conditions.Weather.Any(weather => weather.IsThunderstorm)
        || conditions.Clouds.Any(cloud => cloud.Convective == ConvectiveCloud.Cumulonimbus)
        || (conditions.Wind is { } wind && (wind.Gust ?? wind.Speed)?.Knots >= ForecastGustKt - 1e-9);
}
