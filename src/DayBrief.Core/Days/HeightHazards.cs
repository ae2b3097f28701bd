using DayBrief.Units;

namespace DayBrief.Days;

/// <summary>Cautions of how high the thermals reach: airspace, cloud, freezing, oxygen.</summary>
internal static class HeightHazards
{
    /// <summary>[AIM] 8-1-2: oxygen is advised by day from 10,000 ft. Where it must be used differs: [CFR91] 91.211 and [LuftBODV3]
    /// name 12,000 to 14,000 ft.</summary>
    public const double OxygenFt = 10000;

    public static IEnumerable<Hazard?> Of(Brief brief)
    {
        yield return Ceiling(brief);
        yield return brief.UsableTop is not null
            && Daylight.When(brief, step => step.CarriesToCloud) is { } near
            ? new(HazardKind.CloudClearance) { From = near.From, To = near.To }
            : null;
        yield return brief.FreezingLevel is { } freezing && Above(brief, freezing.Metres) is { } cold
            ? new(HazardKind.Icing, freezing.Metres) { From = cold.From, To = cold.To }
            : null;
        yield return brief.UsableTop is { } top && (brief.Site.Elevation + top).Feet >= OxygenFt
            ? new(HazardKind.Oxygen, (brief.Site.Elevation + top).Metres)
            {
                From = Above(brief, Height.FromFeet(OxygenFt - brief.Site.Elevation.Feet).Metres - 1)?.From,
                To = Above(brief, Height.FromFeet(OxygenFt - brief.Site.Elevation.Feet).Metres - 1)?.To,
            }
            : null;
    }

    private static Hazard? Ceiling(Brief brief) =>
        brief.Site.Limits.Ceiling is { } ceiling && Above(brief, (ceiling - brief.Site.Elevation).Metres) is { } over
            ? new(HazardKind.Ceiling, ceiling.Metres) { From = over.From, To = over.To, About = brief.Site.Limits.CeilingNote }
            : null;

    /// <summary>When thermals are usable above a height over the field; null when the day's usable top stays below it.</summary>
    private static (DateTimeOffset? From, DateTimeOffset? To)? Above(Brief brief, double metres) =>
        brief.UsableTop?.Metres > metres
            ? Daylight.When(brief, step => step.UsableTopAglM > metres) is { } time ? (time.From, time.To) : (null, null)
            : null;
}
