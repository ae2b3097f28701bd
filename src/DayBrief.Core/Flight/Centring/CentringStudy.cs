using DayBrief.Flight.Gliders;
using DayBrief.Flight.Instruments;
using DayBrief.Flight.Thermals;
using DayBrief.Units;

namespace DayBrief.Flight.Centring;

/// <summary>Finds how best to centre a thermal: thousands of seeded encounters, the same for every way of flying.</summary>
public static class CentringStudy
{
    /// <summary>Studies one thermal with one glider and instrument.</summary>
    /// <exception cref="ArgumentOutOfRangeException">An option outside its range, or a speed below the stall in the turn.</exception>
    public static CentringResult Run(Thermal thermal, Glider glider, Variometer instrument, CentringOptions? options = null)
    {
        ArgumentNullException.ThrowIfNull(glider);
        return RunAll(thermal, [glider], instrument, options)[0];
    }

    /// <summary>Studies one thermal with several gliders, which meet the same encounters; results in the gliders' order.</summary>
    /// <param name="thermal">The thermal.</param>
    /// <param name="gliders">The gliders.</param>
    /// <param name="instrument">The instrument of all.</param>
    /// <param name="options">How it is done.</param>
    /// <param name="progress">Told the share done, 0 to 1, after each glider.</param>
    /// <param name="stopping">Stops between gliders.</param>
    /// <exception cref="ArgumentOutOfRangeException">An option outside its range, or a speed below the stall in the turn.</exception>
    /// <exception cref="OperationCanceledException">Stopped.</exception>
    public static IReadOnlyList<CentringResult> RunAll(
        Thermal thermal,
        IReadOnlyList<Glider> gliders,
        Variometer instrument,
        CentringOptions? options = null,
        IProgress<double>? progress = null,
        CancellationToken stopping = default)
    {
        ArgumentNullException.ThrowIfNull(thermal);
        ArgumentNullException.ThrowIfNull(gliders);
        ArgumentNullException.ThrowIfNull(instrument);
        options ??= new();
        Guard.Finite(options.Encounters, 64, 100_000, nameof(options));
        Guard.Finite(options.Threads, 1, name: nameof(options));
        var encounters = new EncounterFlights(thermal, options.Encounters, options.Seed, options.Threads);
        var results = new List<CentringResult>();
        foreach (var glider in gliders)
        {
            stopping.ThrowIfCancellationRequested();
            results.Add(Study(thermal, glider, instrument, options, encounters));
            progress?.Report((double)results.Count / gliders.Count);
        }

        return results;
    }

    private static CentringResult Study(
        Thermal thermal, Glider glider, Variometer instrument, CentringOptions options, EncounterFlights encounters)
    {
        var updraft = thermal.At(thermal.Height);
        var optimum = CirclingOptimum.Find(glider, updraft.UpdraftMs);
        var circle = CircleFor(glider, optimum, updraft, options);
        var briefing = new Briefing(thermal, circle, instrument, SwingTable.For(thermal, circle, instrument), options.Skill);
        return new Judgement(briefing, instrument, optimum, encounters, options.WithErrors).Judge();
    }

    private static Circle CircleFor(Glider glider, CirclingOptimum optimum, LiftSection updraft, CentringOptions options)
    {
        var bank = Guard.Finite(options.BankDeg ?? Math.Clamp(Math.Round(optimum.Circle.BankDeg), 25, 45), 15, 55, nameof(options));
        if (options.Speed is not { } speed)
            return CirclingOptimum.BestAt(glider, updraft.UpdraftMs, bank);

        var circle = Circle.At(glider, bank, speed);
        return circle.StallMarginPct > 0
            ? circle
            : throw new ArgumentOutOfRangeException(nameof(options), speed.Knots, "The glider is stalled at this speed and bank.");
    }
}
