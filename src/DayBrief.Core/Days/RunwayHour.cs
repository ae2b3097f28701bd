using DayBrief.Units;

namespace DayBrief.Days;

/// <summary>The runway in use at one time of the day, and the wind on it.</summary>
/// <param name="Runway">The one that the instructor names, else the direction with the most head wind.</param>
/// <param name="Along">Head wind by the mean.</param>
/// <param name="Across">Cross wind, by the strongest gust that may come at that time.</param>
/// <param name="Source">How the wind is known.</param>
/// <param name="Seen">When the wind was reported or measured; null for one that is forecast or assumed for that time.</param>
/// <param name="Station">Of a report or forecast.</param>
public readonly record struct RunwayHour(
    Runway Runway, Speed Along, Speed Across, WindSource Source, DateTimeOffset? Seen, string? Station)
{
    /// <summary>A wind that was reported or measured once speaks for no longer than this. Common practice, no source.</summary>
    public static readonly TimeSpan HoldsFor = TimeSpan.FromHours(2);

    /// <summary>The runway in use at a time; null where no wind is known for it, its direction varies or the site has no runway.</summary>
    /// <remarks>[FAA-25] ch. 11: head wind U cos α, cross wind U sin α. What the instructor assumes goes before a forecast, a
    /// forecast before a report, a report before the ascent. What a forecast holds possible for a time counts as well as what it
    /// holds likely: the strongest of it across.</remarks>
    /// <param name="brief">The day.</param>
    /// <param name="time">When.</param>
    /// <param name="inUse">The runway that the instructor says is in use; null for the one with the most head wind.</param>
    public static RunwayHour? At(Brief brief, DateTimeOffset time, string? inUse = null)
    {
        ArgumentNullException.ThrowIfNull(brief);
        var winds = GroundWind.Of(brief).Where(wind => Holds(brief, wind, time)).OrderBy(wind => Rank(wind.Source)).ToArray();
        return winds.Length == 0 ? null : On(brief, inUse, [.. winds.Where(wind => wind.Source == winds[0].Source)]);
    }

    /// <summary>The runways with the wind that is known of the morning: reported, else the ascent's; the one in use first, then the
    /// ones into wind.</summary>
    /// <param name="brief">The day.</param>
    /// <param name="inUse">The runway that the instructor says is in use.</param>
    public static IReadOnlyList<RunwayHour> InTheMorning(Brief brief, string? inUse = null)
    {
        ArgumentNullException.ThrowIfNull(brief);
        var known = GroundWind.Of(brief).Where(wind => wind.Source == WindSource.Reported).Select(wind => (GroundWind?)wind).FirstOrDefault()
            ?? (brief.WindAt(Height.FromMetres(10)) is { } morning
                ? new GroundWind(WindSource.Ascent, morning.Speed, morning.FromDegrees, From: Measured(brief))
                : null);
        return known is not { FromDegrees: not null } wind
            ? []
            :
            [
                .. brief.Site.Runways.Select(runway => Of(runway, wind, wind))
                    .Where(part => part.Along.Knots >= 0 || part.Runway.Designator == inUse)
                    .OrderByDescending(part => part.Runway.Designator == inUse).ThenByDescending(part => part.Along),
            ];
    }

    private static RunwayHour? On(Brief brief, string? inUse, GroundWind[] winds)
    {
        if (winds[0].FromDegrees is not { } from || brief.Site.Runways.Length == 0)
            return null;
        var prevailing = Wind.From(from, winds[0].Speed);
        var runway = brief.Site.Runways.FirstOrDefault(candidate => candidate.Designator == inUse) ?? brief.Site.Runways.MaxBy(candidate => RunwayWind.Of(candidate, prevailing).Along)!;
        return winds.Where(wind => wind.FromDegrees is not null).Select(wind => Of(runway, winds[0], wind)).MaxBy(part => part.Across);
    }

    private static RunwayHour Of(Runway runway, GroundWind along, GroundWind across) => new(
        runway,
        RunwayWind.Of(runway, Wind.From(along.FromDegrees!.Value, along.Speed)).Along,
        RunwayWind.Of(runway, Wind.From(across.FromDegrees!.Value, across.Strongest)).Across,
        across.Source,
        across.Source is WindSource.Reported or WindSource.Ascent ? across.From : null,
        across.Station);

    private static bool Holds(Brief brief, GroundWind wind, DateTimeOffset time) => wind.Source switch
    {
        WindSource.Ascent => Measured(brief) is { } at && (time - at).Duration() <= HoldsFor,
        WindSource.Reported => wind.From is { } at && (time - at).Duration() <= HoldsFor,
        _ => !(time < wind.From) && !(time >= wind.To),
    };

    private static DateTimeOffset? Measured(Brief brief) =>
        brief.AscentValidAt is { } at ? Daylight.Local(brief, at) : null;

    private static int Rank(WindSource source) => source switch
    {
        WindSource.Assumed => 0,
        WindSource.Forecast => 1,
        WindSource.Reported => 2,
        _ => 3,
    };
}
