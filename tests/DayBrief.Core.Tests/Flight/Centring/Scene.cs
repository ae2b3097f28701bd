using DayBrief.Flight.Centring.Kernel;
using DayBrief.Flight.Gliders;
using DayBrief.Flight.Instruments;
using DayBrief.Flight.Thermals;
using DayBrief.Units;

namespace DayBrief.Flight.Centring;

/// <summary>Thermals, gliders and encounters that several tests share; all invented.</summary>
internal sealed class Scene(Thermal thermal, double bankDeg, Variometer? instrument = null, int encounters = 2048)
{
    private readonly EncounterFlights _flights = new(thermal, encounters, 5, 2);

    public static Thermal Medium { get; } = Make(2.75, 270, 1600, 640);

    public static Thermal Strong { get; } = Make(5, 350, 2500, 1000);

    public static Thermal Broad { get; } = Make(3, 500, 3000, 1200);

    public static Thermal Narrow { get; } = Make(3, 150, 1200, 500);

    public static Thermal ShortLived { get; } = Make(2.75, 220, 1300, 520, 6);

    /// <summary>The mean over all updrafts, as [Allen2006] has it.</summary>
    public static Thermal Average { get; } = Make(2.5, 120, 1500, 600, form: ThermalForm.Average);

    public static Glider Standard { get; } = GenericGlider.Of(GliderClass.Standard);

    public Variometer Instrument { get; } = instrument ?? Variometer.Usual;

    public Circle Circle { get; } = CirclingOptimum.BestAt(Standard, thermal.At(thermal.Height).UpdraftMs, bankDeg);

    public Briefing Briefing => field ??= new(thermal, Circle, Instrument, SwingTable.For(thermal, Circle, Instrument));

    public EncounterSet Set => field ??= EncounterSet.Create(thermal, Numerics.CounterRandom.FromSeed(5).Stream(0), encounters);

    /// <summary>The closed form's numbers for the distance at which first circles typically lie.</summary>
    public WayParameters Numbers
    {
        get
        {
            var rollOut = RollOut.ClosedForm(Circle, Instrument, 0.7 * thermal.RadiusM);
            return new() { AfterWorstDeg = rollOut.AfterWorstReadingDeg, LevelS = Math.Round(rollOut.LevelS), HoldDeg = 360 };
        }
    }

    public Outcomes Fly(CentringWay way, WayParameters? numbers = null, PilotError error = PilotError.None) =>
        _flights.Judging.Fly(Briefing.Fly(way, numbers ?? Numbers, error), EncounterFlights.Full);

    public bool TurnedTheWrongWay(int encounter) => Set.Miss[encounter] > 0 != Set.Side[encounter] > 0;

    /// <summary>Mean climb over three minutes of some of the encounters, m/s.</summary>
    public static double Climb(Outcomes outcomes, Func<int, bool>? which = null) =>
        Numbered(outcomes, which).Average(encounter => outcomes.Three[encounter]) / 180;

    public static double LostPct(Outcomes outcomes, Func<int, bool>? which = null) =>
        100 * Numbered(outcomes, which).Average(encounter => outcomes.Lost[encounter]);

    public static Thermal Make(double core, double radius, double depth, double height, double? lifeMin = null, double shear = 0, ThermalForm form = ThermalForm.Picked) =>
        new(Speed.FromMetresPerSecond(core), radius, Height.FromMetres(depth), Height.FromMetres(height), lifeMin is { } life ? TimeSpan.FromMinutes(life) : null, shear, form);

    private static IEnumerable<int> Numbered(Outcomes outcomes, Func<int, bool>? which) =>
        Enumerable.Range(0, outcomes.Three.Length).Where(which ?? (_ => true));
}
