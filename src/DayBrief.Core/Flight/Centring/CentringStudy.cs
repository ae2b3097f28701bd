using DayBrief.Flight.Gliders;
using DayBrief.Flight.Instruments;
using DayBrief.Flight.Thermals;
using DayBrief.Units;

namespace DayBrief.Flight.Centring;

/// <summary>Finds how best to centre a thermal: thousands of seeded encounters, the same for every way of flying.</summary>
public static class CentringStudy
{
    /// <summary>Studies one thermal with one glider and instrument.</summary>
    /// <exception cref="ArgumentOutOfRangeException">An option outside its range, or a speed below the margin over the stall in the turn.</exception>
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
    /// <exception cref="ArgumentOutOfRangeException">An option outside its range, or a speed below the margin over the stall in the turn.</exception>
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

    /// <summary>The bank of the circle that is studied: the one asked for, or the best's, held to 25–45° and to the steepest.</summary>
    public static double BankFor(Thermal thermal, Glider glider, CentringOptions options)
    {
        ArgumentNullException.ThrowIfNull(thermal);
        ArgumentNullException.ThrowIfNull(options);
        var limits = options.Limits;
        return options.BankDeg
            ?? Usual(CirclingOptimum.Find(glider, thermal.At(thermal.Height).UpdraftMs, limits, limits.MarginPctAt(thermal.Height)), limits);
    }

    private static double Usual(CirclingOptimum optimum, CircleLimits limits) =>
        Math.Min(Math.Clamp(Math.Round(optimum.Circle.BankDeg), 25, 45), Math.Floor(limits.SteepestBankDeg));

    private static CentringResult Study(
        Thermal thermal, Glider glider, Variometer instrument, CentringOptions options, EncounterFlights encounters)
    {
        var updraft = thermal.At(thermal.Height);
        var optimum = CirclingOptimum.Find(glider, updraft.UpdraftMs, options.Limits, options.Limits.MarginPctAt(thermal.Height));
        var circle = CircleFor(thermal, glider, optimum, options);
        var briefing = new Briefing(thermal, circle, instrument, SwingTable.For(thermal, circle, instrument, Math.Floor(options.Limits.SteepestBankDeg)), options.Skill, options.Limits.SteepestBankDeg);
        return new Judgement(briefing, instrument, optimum, encounters, options.WithErrors).Judge();
    }

    private static Circle CircleFor(Thermal thermal, Glider glider, CirclingOptimum optimum, CentringOptions options)
    {
        var (steepest, marginPct) = (options.Limits.SteepestBankDeg, options.Limits.MarginPctAt(thermal.Height));
        var bank = Guard.Finite(options.BankDeg ?? Usual(optimum, options.Limits), 15, Math.Min(55, steepest), nameof(options));
        if (options.Speed is not { } speed)
            return CirclingOptimum.BestAt(glider, thermal.At(thermal.Height).UpdraftMs, bank, marginPct);

        var circle = Circle.At(glider, bank, speed);
        return circle.StallMarginPct >= marginPct - 1e-9
            ? circle
            : throw new ArgumentOutOfRangeException(nameof(options), speed.Knots, $"At this bank the speed is {circle.StallMarginPct:0.#} % above the stall; {marginPct:0.#} % are needed.");
    }
}
