using System.Collections.Immutable;

namespace DayBrief.Days;

/// <summary>All that a day says of one kind of hazard.</summary>
/// <param name="Kind">The kind.</param>
/// <param name="Hazards">Its hazards, those that rank highest first, never empty.</param>
public sealed record RankedCaution(HazardKind Kind, ImmutableArray<Hazard> Hazards)
{
    /// <summary>The worst of it, which its line speaks of: of several that rank alike the greatest figure, of sight and cloud the least.</summary>
    public Hazard Lead => Alike.MaxBy(hazard => LowIsWorse ? -hazard.Value : hazard.Value)!;

    /// <summary>Those that rank as the worst does.</summary>
    public IEnumerable<Hazard> Alike => Hazards.TakeWhile(hazard =>
        CautionTable.IsSerious(hazard) == CautionTable.IsSerious(Hazards[0]) && CautionTable.RiskOf(hazard).Product == CautionTable.RiskOf(Hazards[0]).Product);

    private bool LowIsWorse => Kind is HazardKind.LowCloud or HazardKind.PoorVisibility or HazardKind.CeilingBelowLeast or HazardKind.VisibilityBelowLeast;

    /// <summary>The worst of it.</summary>
    public Risk Risk => CautionTable.RiskOf(Lead);

    /// <summary>It is never left off a first screen or a sheet.</summary>
    public bool IsSerious => CautionTable.IsSerious(Lead);

    /// <summary>Nobody flies in it, and who does may die: it stands first even where a forecast calls it only probable.</summary>
    internal bool Kills => CautionTable.EndsFlying(Lead) && Risk.Harm == Harm.Death;

    /// <summary>Forecast cloud, squalls and hail of a thunderstorm: where thunder is told it speaks for them, and the other serious
    /// kinds come before, so that three lines are not one storm.</summary>
    internal bool ComesWithThunder => IsSerious && Lead.Source != WindSource.Reported && (Kind is HazardKind.Cumulonimbus or HazardKind.Squall or HazardKind.Hail);

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

    /// <summary>Puts the serious first, of them the storm that kills whatever its chance and its companions last, then all in order of harm times chance,
    /// of the same the greater harm first, then as the kinds stand.</summary>
    public static RankedCautions Of(IEnumerable<Hazard> hazards)
    {
        var kinds = hazards.GroupBy(hazard => hazard.Kind)
            .Select(kind => new RankedCaution(kind.Key, [.. kind.OrderByDescending(CautionTable.IsSerious).ThenByDescending(hazard => CautionTable.RiskOf(hazard).Product)]))
            .ToArray();
        var thunder = kinds.Any(caution => caution.Kind == HazardKind.Thunder);
        return new(
        [
            .. kinds.OrderByDescending(caution => caution.IsSerious)
                .ThenBy(caution => thunder && caution.ComesWithThunder)
                .ThenByDescending(caution => caution.Kills)
                .ThenByDescending(caution => caution.Risk.Product)
                .ThenByDescending(caution => caution.Risk.Harm)
                .ThenBy(caution => caution.Kind),
        ]);
    }
}
