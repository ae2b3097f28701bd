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

    public static IEnumerable<Hazard> Of(Brief brief, IReadOnlyList<GroundWind> winds) =>
        Strips(brief.Site.Runways).SelectMany(strip => Over(strip, brief.Site.Limits.Crosswind, winds));

    private static IEnumerable<Hazard> Over(Runway[] strip, CrosswindLimits limits, IReadOnlyList<GroundWind> winds)
    {
        var byGroup = Limits(limits);
        bool Passes(Speed across) => byGroup.Length > 0
            ? WindHazards.Passes(across, byGroup[0].Limit)
            : across.Knots >= CrosswindKt - 1e-9;
        return WindRun.Of(winds, wind => Across(strip[0], wind), Passes).Select(run => run.As(HazardKind.Crosswind) with
        {
            About = string.Join('/', strip.Select(runway => runway.Designator)),
            Passed =
            [
                .. byGroup.Where(limit => WindHazards.Passes(Speed.FromMetresPerSecond(run.Value), limit.Limit))
                    .Select(limit => new PassedLimit(limit.Group, limit.Limit.MetresPerSecond)),
            ],
        });
    }

    /// <summary>Across by the gusts where there are some; not known where the direction varies.</summary>
    private static Speed? Across(Runway runway, GroundWind wind) =>
        wind.FromDegrees is { } from ? RunwayWind.Of(runway, Wind.From(from, wind.Strongest)).Across : null;

    private static (CrosswindGroup Group, Speed Limit)[] Limits(CrosswindLimits limits) =>
    [
        .. new (CrosswindGroup Group, Speed? Limit)[]
        {
            (CrosswindGroup.BeforeSolo, limits.BeforeSolo),
            (CrosswindGroup.LocalSolo, limits.LocalSolo),
            (CrosswindGroup.CrossCountry, limits.CrossCountry),
        }
            .Where(entry => entry.Limit is not null)
            .Select(entry => (entry.Group, entry.Limit!.Value))
            .OrderBy(entry => entry.Value),
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
