using DayBrief.Flight.Centring.Kernel;
using DayBrief.Flight.Gliders;
using DayBrief.Flight.Instruments;
using DayBrief.Flight.Thermals;
using DayBrief.Numerics;
using DayBrief.Units;

namespace DayBrief.Flight.Centring;

/// <summary>Finds how best to centre a thermal: thousands of seeded encounters, the same for every way of flying.</summary>
public static class CentringStudy
{
    /// <summary>A way is tied with the best unless it is behind by more than this, m/s, beyond chance: nobody can tell so little.</summary>
    internal const double TieMs = 0.02;

    private const int OptimisingEncounters = 256;
    private const int ErrorEncounters = 512;
    private static readonly EncounterKernel.Clock Full = new(EncounterSet.Seconds, 5);
    private static readonly EncounterKernel.Clock Short = new(180, 5);

    /// <summary>Studies one thermal with one glider and instrument.</summary>
    /// <exception cref="ArgumentOutOfRangeException">An option outside its range, or a speed below the stall in the turn.</exception>
    public static CentringResult Run(Thermal thermal, Glider glider, Variometer instrument, CentringOptions? options = null)
    {
        ArgumentNullException.ThrowIfNull(thermal);
        ArgumentNullException.ThrowIfNull(glider);
        ArgumentNullException.ThrowIfNull(instrument);
        options ??= new();
        Guard.Finite(options.Encounters, 64, 100_000, nameof(options));
        var updraft = thermal.At(thermal.Height);
        var optimum = CirclingOptimum.Find(glider, updraft.UpdraftMs);
        var circle = CircleFor(glider, optimum, updraft, options);
        var swing = SwingTable.For(thermal, circle, instrument);
        return new Judging(new(thermal, circle, instrument, swing), instrument, optimum, options).Judge();
    }

    private static Circle CircleFor(Glider glider, CirclingOptimum optimum, AllenUpdraft updraft, CentringOptions options)
    {
        var bank = Guard.Finite(options.BankDeg ?? Math.Clamp(Math.Round(optimum.Circle.BankDeg), 25, 45), 15, 55, nameof(options));
        if (options.Speed is not { } speed)
            return CirclingOptimum.BestAt(glider, updraft.UpdraftMs, bank);

        var circle = Circle.At(glider, bank, speed);
        return circle.StallMarginPct > 0
            ? circle
            : throw new ArgumentOutOfRangeException(nameof(options), speed.Knots, "The glider is stalled at this speed and bank.");
    }

    /// <summary>One study: choosing numbers with one set of encounters, judging with another.</summary>
    private sealed class Judging
    {
        private readonly Briefing _briefing;
        private readonly Variometer _instrument;
        private readonly CirclingOptimum _optimum;
        private readonly CentringOptions _options;
        private readonly EncounterSet _set;
        private readonly EncounterFlight _flight;
        private readonly EncounterFlight _rehearsal;
        private readonly EncounterFlight _errors;

        public Judging(Briefing briefing, Variometer instrument, CirclingOptimum optimum, CentringOptions options)
        {
            (_briefing, _instrument, _optimum, _options) = (briefing, instrument, optimum, options);
            var random = CounterRandom.FromSeed(options.Seed);
            var column = new Column(briefing.Thermal);
            _set = EncounterSet.Create(briefing.Thermal, random.Stream(0), options.Encounters);
            _flight = new(_set, column, options.Threads);
            _rehearsal = new(EncounterSet.Create(briefing.Thermal, random.Stream(1), OptimisingEncounters), column, options.Threads);
            _errors = new(EncounterSet.Create(briefing.Thermal, random.Stream(2), ErrorEncounters), column, options.Threads);
        }

        public CentringResult Judge()
        {
            var held = _flight.Fly(_briefing.Fly(CentringWay.Hold, new()), Full);
            var offset = Median(held.FirstOffset) * _briefing.Thermal.RadiusM;
            var rollOut = RollOut.ClosedForm(_briefing.Circle, _instrument, offset ?? 0);
            var optimiser = new WayOptimiser(_briefing, _rehearsal, rollOut);
            var flown = FlyAll(optimiser);
            var best = flown.MaxBy(each => Estimate.Of(each.Outcomes.Three).Mean)!;
            var ranking = flown.Select(each => Result(each, best)).OrderByDescending(each => each.Climb3MinMs.Mean).ToArray();
            var tied = ranking.Where(each => each.BehindBestMs.Mean - each.BehindBestMs.HalfWidth95 < TieMs)
                .Select(each => each.Way).Order().ToArray();
            var recommended = flown.Single(each => each.Way == tied[0]);
            var shift = flown.Single(each => each.Way == CentringWay.StraightenAndShift).Numbers;
            return new()
            {
                Circle = _briefing.Circle,
                Optimum = _optimum,
                CentredClimbMs = _briefing.Swing.Rows[0].MeanClimbMs,
                Instrument = _instrument,
                LagDeg = _instrument.LagDeg(_briefing.Circle.PeriodS),
                LagS = _instrument.LagSecondsIn(_briefing.Circle.PeriodS),
                RollOut = rollOut,
                FirstOffsetM = offset,
                SimulatedRollOut = new(shift.AfterWorstDeg, shift.AfterWorstDeg / _briefing.Circle.RateDegS, shift.LevelS),
                Swing = _briefing.Swing,
                Ranking = ranking,
                Tied = tied.Length > 1 ? tied : [],
                Recommended = recommended.Way,
                EntryCosts = _options.WithErrors
                    ? EntryCosts.Of(_briefing, _briefing.Fly(recommended.Way, recommended.Numbers), _errors, Short)
                    : [],
                Encounters = _set.Count,
                Seed = _options.Seed,
            };
        }

        private Flown[] FlyAll(WayOptimiser optimiser)
        {
            var numbers = CentringWays.SimplestFirst.Where(way => way != CentringWay.BySwing)
                .ToDictionary(way => way, way => optimiser.Choose(way));
            var (shift, tighten) = (numbers[CentringWay.StraightenAndShift], numbers[CentringWay.TightenAndEase]);
            var both = shift with { AfterBestDeg = tighten.AfterBestDeg, TightenDeg = tighten.TightenDeg, HoldDeg = tighten.HoldDeg };
            numbers[CentringWay.BySwing] = optimiser.Choose(CentringWay.BySwing, both);
            return [.. CentringWays.SimplestFirst.Select(way => new Flown(way, numbers[way], _flight.Fly(_briefing.Fly(way, numbers[way]), Full)))];
        }

        private WayResult Result(Flown flown, Flown best) => new()
        {
            Way = flown.Way,
            Climb3MinMs = Estimate.Of(flown.Outcomes.Three, 1.0 / 180),
            Climb5MinMs = Estimate.Of(flown.Outcomes.Five, 1.0 / 300),
            LostPct = Estimate.Of(flown.Outcomes.Lost, 100),
            TurnsToCentre = Median(flown.Outcomes.CentredAt),
            BehindBestMs = Estimate.OfDifference(best.Outcomes.Three, flown.Outcomes.Three, 1.0 / 180),
            Parameters = flown.Numbers.Of(flown.Way),
            Errors = _options.WithErrors ? [.. Costs(flown)] : [],
        };

        private IEnumerable<ErrorCost> Costs(Flown flown)
        {
            var clean = _errors.Fly(_briefing.Fly(flown.Way, flown.Numbers), Short);
            var corrects = flown.Way is CentringWay.StraightenAndShift or CentringWay.TightenAndEase or CentringWay.BySwing;
            foreach (var error in Enum.GetValues<PilotError>().Where(each => each != PilotError.None && (corrects || each != PilotError.ChasingTheNeedle)))
            {
                var wrong = _errors.Fly(_briefing.Fly(flown.Way, flown.Numbers, error), Short);
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
}
