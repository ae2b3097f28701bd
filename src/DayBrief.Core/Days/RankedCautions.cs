using System.Collections.Immutable;

namespace DayBrief.Days;

/// <summary>All that a day says of one kind of hazard.</summary>
/// <param name="Kind">The kind.</param>
/// <param name="Hazards">Its hazards, the worst first, never empty.</param>
public sealed record RankedCaution(HazardKind Kind, ImmutableArray<Hazard> Hazards)
{
    /// <summary>The worst of it, which its line speaks of.</summary>
    public Hazard Lead => Hazards[0];

    /// <summary>The worst of it.</summary>
    public Risk Risk => CautionTable.RiskOf(Lead);

    /// <summary>It is never left off a first screen or a sheet.</summary>
    public bool IsSerious => Risk.IsSerious;

    /// <summary>It comes last and may stand smaller.</summary>
    public bool IsMinor => Risk.Harm == Harm.Discomfort;
}

/// <summary>The cautions of a day, the worst first.</summary>
/// <param name="All">All of them.</param>
public sealed record RankedCautions(ImmutableArray<RankedCaution> All)
{
    /// <summary>How many stand first with a line of their own.</summary>
    public const int WorstCount = 3;

    /// <summary>The worst, in order: at most three.</summary>
    public IEnumerable<RankedCaution> Worst => All.Take(WorstCount);

    /// <summary>Those that follow.</summary>
    public IEnumerable<RankedCaution> Rest => All.Skip(WorstCount);

    /// <summary>The serious ones among those that follow: they are named wherever the worst stand.</summary>
    public IEnumerable<RankedCaution> SeriousRest => Rest.Where(caution => caution.IsSerious);

    /// <summary>Puts hazards in order of harm times chance, of the same the greater harm first, then as the table has them.</summary>
    public static RankedCautions Of(IEnumerable<Hazard> hazards) => new(
    [
        .. hazards.GroupBy(hazard => hazard.Kind)
            .Select(kind => new RankedCaution(kind.Key, [.. kind.OrderByDescending(hazard => CautionTable.RiskOf(hazard).Product)]))
            .OrderByDescending(caution => caution.Risk.Product)
            .ThenByDescending(caution => caution.Risk.Harm)
            .ThenBy(caution => caution.Kind),
    ]);
}
