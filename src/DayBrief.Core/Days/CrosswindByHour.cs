using System.Collections.Immutable;
using DayBrief.Units;

namespace DayBrief.Days;

/// <summary>Wind across each runway over the day, against the site's limits by experience.</summary>
internal static class CrosswindByHour
{
    /// <summary>[FAA-25] ch. 11: gliders and light aircraft show at least 0.2 V_S0 across the runway, 8 kt at 40 kt. Taken
    /// where the site states no limit.</summary>
    public const double CrosswindKt = 8;

    /// <summary>Both directions of one strip count as one runway within this angle.</summary>
    private const double SameStripDegrees = 10;

    public static IEnumerable<Hazard> Of(Brief brief, IReadOnlyList<GroundWind> winds)
    {
        var strips = Strips(brief.Site.Runways).ToArray();
        return strips.SelectMany(strip => Over(strip, strips, Limits(brief.Site.Limits.Crosswind), winds));
    }

    private static IEnumerable<Hazard> Over(
        Runway[] strip, Runway[][] strips, (CrosswindGroup? Group, Speed Limit)[] limits, IReadOnlyList<GroundWind> winds)
    {
        bool Mentioned(Speed across) => limits.Length > 0
            ? WindHazards.Passes(across, limits[0].Limit)
            : across.Knots >= CrosswindKt - 1e-9;
        return WindRun.Of(winds, wind => Across(strip[0], wind), Mentioned).Select(run =>
        {
            var ends = strips.All(other => Ends(other[0], limits, run.Wind));
            return run.As(HazardKind.Crosswind) with
            {
                About = string.Join('/', strip.Select(runway => runway.Designator)),
                EndsFlying = ends,
                Risk = ends ? new(Harm.Accident, Chance.Likely) : null,
                Passed = limits.Length == 0 && ends
                    ? [new(null, UsualLimits.Crosswind.MetresPerSecond, IsSet: false)]
                    : [.. Passed(limits, Speed.FromMetresPerSecond(run.Value))],
            };
        });
    }

    /// <summary>Whether a wind passes the lowest limit on a runway; where the site sets none, the usual ones of the mean and of gusts.</summary>
    private static bool Ends(Runway runway, (CrosswindGroup? Group, Speed Limit)[] limits, GroundWind wind) =>
        limits.Length > 0
            ? Across(runway, wind) is { } across && WindHazards.Passes(across, limits[0].Limit)
            : (Across(runway, wind with { Gust = null }) is { } mean && WindHazards.Passes(mean, UsualLimits.Crosswind))
                || (wind.Gust is not null && Across(runway, wind) is { } gust && WindHazards.Passes(gust, UsualLimits.Gust));

    private static IEnumerable<PassedLimit> Passed((CrosswindGroup? Group, Speed Limit)[] limits, Speed across) =>
        limits.Where(limit => WindHazards.Passes(across, limit.Limit))
            .Select(limit => new PassedLimit(limit.Group, limit.Limit.MetresPerSecond));

    /// <summary>Across by the gusts where there are some; not known where the direction varies.</summary>
    private static Speed? Across(Runway runway, GroundWind wind) =>
        wind.FromDegrees is { } from ? RunwayWind.Of(runway, Wind.From(from, wind.Strongest)).Across : null;

    private static (CrosswindGroup? Group, Speed Limit)[] Limits(CrosswindLimits limits) =>
    [
        .. new (CrosswindGroup? Group, Speed? Limit)[]
        {
            (null, limits.Anybody),
            (CrosswindGroup.BeforeSolo, limits.BeforeSolo),
            (CrosswindGroup.LocalSolo, limits.LocalSolo),
            (CrosswindGroup.CrossCountry, limits.CrossCountry),
        }
            .Where(entry => entry.Limit is not null)
            .Select(entry => (entry.Group, Limit: entry.Limit!.Value))
            .OrderBy(entry => entry.Limit),
    ];

    private static IEnumerable<Runway[]> Strips(ImmutableArray<Runway> runways)
    {
        var strips = new List<List<Runway>>();
        foreach (var runway in runways)
        {
            var same = strips.Find(strip => Math.Abs(Math.IEEERemainder(runway.HeadingDegrees - strip[0].HeadingDegrees, 180)) <= SameStripDegrees);
            if (same is null)
                strips.Add([runway]);
            else
                same.Add(runway);
        }

        return strips.Select(strip => strip.ToArray());
    }
}
