using DayBrief.Reports;

namespace DayBrief.Days;

/// <summary>Weather and cloud that reports and forecasts name, each group's at its own time.</summary>
internal static class WeatherHazards
{
    /// <summary>What each kind is named by. [WMO306] FM 15 and FM 51, code table 4678.</summary>
    private static readonly (HazardKind Kind, Harm Harm, Func<AerodromeConditions, bool> Named)[] Kinds =
    [
        (HazardKind.Thunder, Harm.Death, IsThunder),
        (HazardKind.Cumulonimbus, Harm.Death, conditions => !IsThunder(conditions) && Has(conditions, ConvectiveCloud.Cumulonimbus)),
        (HazardKind.Squall, Harm.Death, conditions => Falls(conditions, "SQ")),
        (HazardKind.FunnelCloud, Harm.Death, conditions => Falls(conditions, "FC")),
        (HazardKind.Hail, Harm.Death, conditions => Falls(conditions, "GR") || Falls(conditions, "GS")),
        (HazardKind.FreezingPrecipitation, Harm.Death, conditions => conditions.Weather.Any(weather => weather is { Descriptor: "FZ", IsPrecipitation: true })),
        (HazardKind.Showers, Harm.Accident, conditions => !IsThunder(conditions) && conditions.Weather.Any(weather => weather is { Descriptor: "SH", IsPrecipitation: true })),
        (HazardKind.Overdevelopment, Harm.Accident, conditions => Has(conditions, ConvectiveCloud.ToweringCumulus)),
    ];

    public static IEnumerable<Hazard> Of(Brief brief) => Kinds.SelectMany(kind => (IEnumerable<Hazard>)
    [
        .. Reported(brief, kind.Kind, kind.Harm, kind.Named),
        .. Joined(ForecastTimes.Of(brief).Where(part => kind.Named(part.Conditions)).Select(part => new Hazard(kind.Kind)
        {
            From = part.From,
            To = part.To,
            Source = WindSource.Forecast,
            About = brief.Forecast!.Station,
            Quoted = part.Group.Raw,
            Risk = part.RiskOf(kind.Harm),
        })),
    ]);

    private static IEnumerable<Hazard> Reported(Brief brief, HazardKind kind, Harm harm, Func<AerodromeConditions, bool> named) =>
        brief.Observation is { } report && named(report.Conditions)
            ? [new(kind) { From = Daylight.Reported(brief), Source = WindSource.Reported, About = report.Station, Risk = new(harm, Chance.Stated) }]
            : [];

    /// <summary>What a group that becomes leaves as it was goes on from the group before.</summary>
    private static List<Hazard> Joined(IEnumerable<Hazard> parts)
    {
        var joined = new List<Hazard>();
        foreach (var part in parts)
        {
            if (joined.Count > 0 && joined[^1].To >= part.From && joined[^1].Risk == part.Risk)
                joined[^1] = joined[^1] with { To = part.To > joined[^1].To ? part.To : joined[^1].To };
            else
                joined.Add(part);
        }

        return joined;
    }

    private static bool IsThunder(AerodromeConditions conditions) => conditions.Weather.Any(weather => weather.IsThunderstorm);

    private static bool Has(AerodromeConditions conditions, ConvectiveCloud cloud) => conditions.Clouds.Any(layer => layer.Convective == cloud);

    private static bool Falls(AerodromeConditions conditions, string code) => conditions.Weather.Any(weather => weather.Phenomena.Contains(code));
}
