using DayBrief.Units;

namespace DayBrief.Days;

/// <summary>Cautions of the wind at the ground: against the site's limits, as gusts, by strength.</summary>
internal static class WindHazards
{
    /// <summary>Wind at the ground from which a brief mentions it: 15 kt. Common practice, no source.</summary>
    public const double SurfaceWindKt = 15;

    /// <summary>[WMO306] FM 15: gusts are reported when they exceed the mean by 10 kt or more.</summary>
    public const double GustExcessKt = 10;

    /// <summary>A limit is met by a figure that rounds to it: a twentieth of a knot.</summary>
    private const double RoundingKt = 0.05;

    public static IEnumerable<Hazard> Of(Brief brief, IReadOnlyList<GroundWind> winds)
    {
        var limits = brief.Site.Limits;
        Hazard[] over =
        [
            .. Over(HazardKind.WindOverLimit, winds, wind => wind.Speed, limits.Wind, UsualLimits.Wind),
            .. Over(HazardKind.GustOverLimit, winds, wind => wind.Gust, limits.Gust, UsualLimits.Gust),
        ];
        var gusts = over.Any(hazard => hazard.Kind == HazardKind.GustOverLimit)
            ? []
            : WindRun.Of(winds.Where(Gusty), wind => wind.Gust, _ => true)
                .Select(run => run.As(HazardKind.Gusts) with { Beside = run.Wind.Speed.MetresPerSecond });
        var strong = over.Length > 0
            ? []
            : WindRun.Of(winds, wind => wind.Strongest, speed => speed.Knots >= SurfaceWindKt - 1e-9).Select(run => run.As(HazardKind.SurfaceWind));
        return [.. over, .. gusts, .. strong];
    }

    /// <summary>More than a limit allows.</summary>
    public static bool Passes(Speed speed, Speed limit) => speed.Knots > limit.Knots + RoundingKt;

    private static bool Gusty(GroundWind wind) => wind.Gust?.Knots - wind.Speed.Knots >= GustExcessKt - RoundingKt;

    private static IEnumerable<Hazard> Over(
        HazardKind kind, IReadOnlyList<GroundWind> winds, Func<GroundWind, Speed?> figure, Speed? limit, Speed usual)
    {
        var most = limit ?? usual;
        return WindRun.Of(winds, figure, speed => Passes(speed, most))
            .Select(run => run.As(kind) with { Passed = [new(null, most.MetresPerSecond, limit is not null)] });
    }
}
