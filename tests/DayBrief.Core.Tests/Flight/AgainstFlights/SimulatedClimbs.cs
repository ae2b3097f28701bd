using DayBrief.Flight.Centring;
using DayBrief.Flight.Centring.Kernel;
using DayBrief.Flight.Gliders;
using DayBrief.Flight.Instruments;
using DayBrief.Flight.Thermals;
using DayBrief.Numerics;
using DayBrief.Units;
using DayBrief.Updrafts;

namespace DayBrief.Flight.AgainstFlights;

/// <summary>Tries simulated as they are flown, in a stated mix of thermals and classes; bank and speed are imposed as recorded.</summary>
internal sealed class SimulatedClimbs
{
    private const int Encounters = 512;
    private readonly List<ClimbRow> _kept = [];
    private readonly List<(int Turns, double First)> _tries = [];

    private SimulatedClimbs()
    {
        var seed = 1;
        foreach (var thermal in Thermals)
        {
            foreach (var glider in Gliders)
                Fly(thermal, Circle.At(glider, 37, Speed.FromKilometresPerHour(105)), seed++);
        }
    }

    /// <summary>Layers of 1300, 1600 and 1900 m with w* 1.6, 1.9 and 2.2 m/s under cumulus, entered at 0.4 of the depth.</summary>
    public static IReadOnlyList<Thermal> Thermals { get; } =
        [.. new[] { (1300.0, 1.6), (1600, 1.9), (1900, 2.2) }.Select(layer => Make(layer.Item1, layer.Item2))];

    public static IReadOnlyList<Glider> Gliders { get; } =
        [.. new[] { GliderClass.Club, GliderClass.Standard, GliderClass.Open }.Select(each => GenericGlider.Of(each).AtWingLoading(LoadingKgM2))];

    public static SimulatedClimbs Mix { get; } = new();

    /// <summary>Wing loading of competition gliders, partly with water (assumed: the recordings do not tell).</summary>
    public const double LoadingKgM2 = 42;

    /// <summary>Climbs of three turns or more.</summary>
    public IReadOnlyList<ClimbRow> Kept => _kept;

    public double LeftBeforePct(int turns) => 100.0 * _tries.Count(each => each.Turns < turns) / _tries.Count;

    /// <summary>First turns of all tries, m/s.</summary>
    public IEnumerable<double> FirstTurns => _tries.Where(each => each.Turns > 0).Select(each => each.First);

    private static Thermal Make(double depthM, double wStarMs)
    {
        var (depth, height) = (Height.FromMetres(depthM), Height.FromMetres(0.4 * depthM));
        var picked = PickedUpdraft.At(Speed.FromMetresPerSecond(wStarMs), depth, height, depth);
        return new(
            Speed.FromMetresPerSecond(picked.CoreMs), picked.RadiusM, depth, height, TimeSpan.FromMinutes(20),
            top: depth, carried: PickedUpdraft.CarriedThroughBase);
    }

    private void Fly(Thermal thermal, Circle circle, int seed)
    {
        var swing = SwingTable.For(thermal, circle, Variometer.Quick);
        var briefing = new Briefing(thermal, circle, Variometer.Quick, swing, skill: PilotSkill.Practised);
        var set = EncounterSet.Create(thermal, CounterRandom.FromSeed(seed), Encounters);
        var rollOut = RollOut.ClosedForm(circle, Variometer.Quick, 0);
        var flying = briefing.Fly(CentringWay.BySwing, AsFlown with { AfterWorstDeg = rollOut.AfterWorstReadingDeg });
        var trace = new EncounterFlight(set, new Column(thermal), 2).Fly(flying, EncounterFlights.Full, Encounters).Trace!;
        for (var encounter = 0; encounter < Encounters; encounter++)
        {
            var record = TurnRecord.Of(trace, encounter);
            var turns = Leaving.AsFlown.TurnsKept(record, swing.Rows[0].MeanClimbMs);
            _tries.Add((turns, record.Count > 0 ? record.ClimbMs(0) : 0));
            if (turns >= 3)
                _kept.Add(new SimulatedTurns(trace, set, record, encounter, circle.RadiusM).Row(turns));
        }
    }

    /// <summary>What the practised pilot does, set once on the given half: turns in 5 s after the surge, takes out two fifths of what the swing tells,
    /// straightens from 0.3 radii of the lift on and else tightens by 5° through 270°.</summary>
    private static WayParameters AsFlown => new() { AfterSurgeS = 5, Share = 0.4, LargeFrom = 0.3, TightenDeg = 5, HoldDeg = 270 };
}
