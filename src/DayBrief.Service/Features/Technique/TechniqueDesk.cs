using System.Collections.Concurrent;
using DayBrief.Days;
using DayBrief.Flight.Centring;
using DayBrief.Flight.Gliders;
using DayBrief.Flight.Instruments;
using DayBrief.Flight.Thermals;

namespace DayBrief.Service.Features.Technique;

/// <summary>One thermal's studies for all classes, or how far they have come.</summary>
internal sealed record TechniqueState(double Done, IReadOnlyList<CentringResult>? Results);

/// <summary>Remembers the studies of centring: per thermal and instrument all classes at once, since they share encounters.</summary>
internal sealed class TechniqueDesk
{
    private const int Remembered = 100;

    /// <summary>Encounters that judge the ways.</summary>
    public int Encounters { get; init; } = new CentringOptions().Encounters;

    private readonly ConcurrentDictionary<string, TechniqueState> _states = new();

    /// <summary>The classes, in the order of the results.</summary>
    public static IReadOnlyList<GliderClass> Classes { get; } = Enum.GetValues<GliderClass>();

    public TechniqueState? Find(TechniqueKey key) => _states.GetValueOrDefault(key.ToString());

    /// <summary>The studies of all classes, computed now where they are not there yet.</summary>
    public IReadOnlyList<CentringResult> Studies(TechniqueKey key, CancellationToken stopping = default)
    {
        Claim(key);
        return Compute(key, stopping);
    }

    /// <summary>Marks a study as asked for; false when it already is.</summary>
    public bool Claim(TechniqueKey key)
    {
        if (_states.Count >= Remembered)
            _states.Clear();
        return _states.TryAdd(key.ToString(), new(0, null));
    }

    /// <summary>Computes all classes for one thermal and instrument.</summary>
    public IReadOnlyList<CentringResult> Compute(TechniqueKey key, CancellationToken stopping)
    {
        if (Find(key) is { Results: { } there })
            return there;
        var progress = new Told(done => _states[key.ToString()] = new(done, null));
        var results = CentringStudy.RunAll(
            key.ToThermal(), [.. Classes.Select(GenericGlider.Of)], key.ToVariometer(), key.ToOptions() with { Encounters = Encounters }, progress, stopping);
        _states[key.ToString()] = new(1, results);
        return results;
    }

    /// <summary>Tells at once, on the computing thread, so that a finished study is never overwritten by late news.</summary>
    private sealed class Told(Action<double> tell) : IProgress<double>
    {
        public void Report(double value) => tell(value);
    }
}

/// <summary>A thermal and an instrument as plain numbers, so that a job can carry them.</summary>
internal sealed record TechniqueKey(
    double CoreMs, double RadiusM, double DepthM, double HeightM, double TopM, double Carried, double? LifetimeS, double ShearMsPerKm, double LagS, bool Audio,
    Experience Experience, double SteepestBankDeg, double MarginPct)
{
    public static TechniqueKey Of(Thermal thermal, Pilot pilot, CircleLimits limits) => Of(thermal, pilot.Variometer, pilot.Experience, limits);

    private static TechniqueKey Of(Thermal thermal, Variometer instrument, Experience experience, CircleLimits limits) => new(
        Math.Round(thermal.CoreUpdraft.MetresPerSecond, 3),
        Math.Round(thermal.RadiusM, 2),
        Math.Round(thermal.Depth.Metres, 1),
        Math.Round(thermal.Height.Metres, 1),
        Math.Round(thermal.TopM, 1),
        Math.Round(thermal.Carried, 3),
        thermal.Lifetime is { } life ? Math.Round(life.TotalSeconds) : null,
        Math.Round(thermal.WindShearMsPerKm, 2),
        instrument.LagS,
        instrument.Display == Display.Audio,
        experience,
        limits.SteepestBankDeg,
        limits.MarginPctAt(thermal.Height));

    public Thermal ToThermal() => new(
        Units.Speed.FromMetresPerSecond(CoreMs),
        RadiusM,
        Units.Height.FromMetres(DepthM),
        Units.Height.FromMetres(HeightM),
        LifetimeS is { } seconds ? TimeSpan.FromSeconds(seconds) : null,
        ShearMsPerKm,
        ThermalForm.Picked,
        Units.Height.FromMetres(TopM),
        Carried);

    /// <summary>As steep and as near the stall as the group goes there, flown as well as it flies.</summary>
    public CentringOptions ToOptions() => new()
    {
        Limits = new() { SteepestBankDeg = SteepestBankDeg, LowMarginPct = MarginPct, LowBelow = Units.Height.FromMetres(double.MaxValue) },
        Skill = Experience switch
        {
            Experience.BeforeSolo => PilotSkill.Learning,
            Experience.LocalSolo => PilotSkill.Solo,
            _ => PilotSkill.Practised,
        },
    };

    public Variometer ToVariometer() => new(LagS, Audio ? Display.Audio : Display.Needle);
}
