using DayBrief.Flight.Centring.Kernel;
using DayBrief.Flight.Gliders;
using DayBrief.Flight.Instruments;

namespace DayBrief.Flight.Centring;

/// <summary>One study: numbers chosen with one set of encounters, ways judged with another, errors costed with a third.</summary>
internal sealed class Judgement(
    Briefing briefing, Variometer instrument, CirclingOptimum optimum, EncounterFlights encounters, bool withErrors)
{
    /// <summary>Encounters whose turns are counted: medians need no more.</summary>
    private const int Counted = 512;

    public CentringResult Judge()
    {
        var held = encounters.Judging.Fly(briefing.Fly(CentringWay.Hold, new()), EncounterFlights.Full, traced: Counted);
        var offset = Median(held.FirstOffset) * briefing.Thermal.RadiusM;
        var rollOut = RollOut.ClosedForm(briefing.Circle, instrument, offset ?? 0);
        var flown = FlyAll(new(briefing, encounters.Choosing, rollOut, briefing.TurnInS), held);
        var best = flown.Where(each => MayBeAdvised(each.Way)).MaxBy(each => Estimate.Of(each.Outcomes.Three).Mean)!;
        return Report(flown, [.. flown.Select(each => Result(each, best)).OrderBy(each => each.Way == CentringWay.Reverse).ThenByDescending(each => each.Climb3MinMs.Mean)], rollOut, offset);
    }

    private CentringResult Report(Flown[] flown, WayResult[] ranking, RollOut rollOut, double? offset)
    {
        var tied = Tied(ranking);
        var recommended = flown.Single(each => each.Way == Simplest(tied));
        var shift = flown.Single(each => each.Way == CentringWay.StraightenAndShift).Numbers;
        return new()
        {
            Thermal = briefing.Thermal,
            Circle = briefing.Circle,
            Optimum = optimum,
            CentredClimbMs = briefing.Swing.Rows[0].MeanClimbMs,
            Instrument = instrument,
            LagDeg = instrument.LagDeg(briefing.Circle.PeriodS),
            LagS = instrument.LagSecondsIn(briefing.Circle.PeriodS),
            RollOut = rollOut,
            FirstOffsetM = offset,
            SimulatedRollOut = new(shift.AfterWorstDeg, shift.AfterWorstDeg / briefing.Circle.RateDegS, shift.LevelS),
            Swing = briefing.Swing,
            Ranking = ranking,
            Tied = tied.Length > 1 ? tied : [],
            Recommended = recommended.Way,
            EntryCosts = withErrors ? Costs(briefing.Fly(recommended.Way, recommended.Numbers)) : [],
            Encounters = encounters.Count,
            Seed = encounters.Seed,
        };
    }

    /// <summary>The ways that may be advised and cannot be told from the best of them: the difference, encounter by encounter, is within its uncertainty.
    /// Reversing never is: whoever circles there does not expect it (common practice, no source).</summary>
    private CentringWay[] Tied(WayResult[] ranking) =>
        [.. ranking.Where(each => MayBeAdvised(each.Way) && each.BehindBestMs.Mean <= each.BehindBestMs.HalfWidth95).Select(each => each.Way).Order()];

    private bool MayBeAdvised(CentringWay way) =>
        way != CentringWay.Reverse && (way != CentringWay.TightenAndEase || briefing.Tightenings[0] > 0);

    /// <summary>The simplest of the tied that is a way for every turn: levelling after 270° is for the wrong turn alone, and told by itself.</summary>
    private static CentringWay Simplest(CentringWay[] tied) => tied.Where(way => way != CentringWay.LevelAfter270).DefaultIfEmpty(CentringWay.Hold).First();

    private IReadOnlyList<EntryCost> Costs(Flying accurate) =>
        EntryCosts.Of(briefing, accurate, encounters.Erring, EncounterFlights.Short);

    private Flown[] FlyAll(WayOptimiser optimiser, Outcomes held)
    {
        var numbers = CentringWays.SimplestFirst.Where(way => way != CentringWay.BySwing)
            .ToDictionary(way => way, way => optimiser.Choose(way));
        var (shift, tighten) = (numbers[CentringWay.StraightenAndShift], numbers[CentringWay.TightenAndEase]);
        var both = shift with { AfterBestDeg = tighten.AfterBestDeg, TightenDeg = tighten.TightenDeg, HoldDeg = tighten.HoldDeg };
        numbers[CentringWay.BySwing] = optimiser.Choose(CentringWay.BySwing, both);
        return [.. CentringWays.SimplestFirst.Select(way => new Flown(
            way, numbers[way], way == CentringWay.Hold ? held : encounters.Judging.Fly(briefing.Fly(way, numbers[way]), EncounterFlights.Full, traced: Counted)))];
    }

    private WayResult Result(Flown flown, Flown best) => new()
    {
        Way = flown.Way,
        Climb3MinMs = Estimate.Of(flown.Outcomes.Three, 1.0 / 180),
        Climb5MinMs = Estimate.Of(flown.Outcomes.Five, 1.0 / 300),
        LostPct = Estimate.Of(flown.Outcomes.Lost, 100),
        TurnsToCentre = Median(flown.Outcomes.CentredAt),
        Figures = ClimbFigures.Of(flown.Outcomes.Trace!, briefing.Swing.Rows[0].MeanClimbMs, Leaving.AsFlown),
        BehindBestMs = Estimate.OfDifference(best.Outcomes.Three, flown.Outcomes.Three, 1.0 / 180),
        Parameters = Told(flown),
        Errors = withErrors ? [.. Costs(flown)] : [],
    };

    /// <summary>The way's numbers, and the swing from which it does something about the circle: all that was simulated is told.</summary>
    private Dictionary<string, double> Told(Flown flown)
    {
        var (told, flying) = (new Dictionary<string, double>(flown.Numbers.Of(flown.Way)), briefing.Fly(flown.Way, flown.Numbers));
        if (flying.ShiftFrom < Flying.NoSwing)
            told["straightensFromMs"] = flying.ShiftFrom;
        if (flying.TightenFrom < Flying.NoSwing)
            told["tightensFromMs"] = flying.TightenFrom;
        return told;
    }

    private static bool Corrects(CentringWay way) => way is CentringWay.StraightenAndShift or CentringWay.TightenAndEase or CentringWay.BySwing;

    private IEnumerable<ErrorCost> Costs(Flown flown)
    {
        var clean = encounters.Erring.Fly(briefing.Fly(flown.Way, flown.Numbers), EncounterFlights.Short);
        foreach (var error in Enum.GetValues<PilotError>().Where(each => each != PilotError.None && (Corrects(flown.Way) || each != PilotError.ChasingTheNeedle)))
        {
            var wrong = encounters.Erring.Fly(briefing.Fly(flown.Way, flown.Numbers, error), EncounterFlights.Short);
            yield return new(
                error,
                Estimate.OfDifference(clean.Three, wrong.Three, 1.0 / 180),
                Estimate.OfDifference(wrong.Lost, clean.Lost, 100));
        }
    }

    /// <summary>Median with never (below 0) counted as the largest; null if the median itself is never.</summary>
    private static double? Median(float[] values)
    {
        var ordered = values.Select(value => value < 0 ? float.MaxValue : value).Order().ToArray();
        var middle = ordered[ordered.Length / 2];
        return middle < float.MaxValue ? middle : null;
    }

    private sealed record Flown(CentringWay Way, WayParameters Numbers, Outcomes Outcomes);
}
