using DayBrief.Service.Languages;

namespace DayBrief.Service.Features.Briefs;

/// <summary>The working state of a brief: one site, one day.</summary>
public sealed record Draft
{
    /// <summary>Who edits when nobody does; a key of the texts.</summary>
    public static string ByItself { get; } = Language.Text("the automation");

    public required string Id { get; init; }

    public required string SiteId { get; init; }

    public required DateOnly Date { get; init; }

    /// <summary>Counts the times it was kept; 0 before the first.</summary>
    public int Version { get; init; }

    public string? EditedBy { get; init; }

    public required DateTimeOffset EditedAt { get; init; }

    /// <summary>What stands in the fields of the desk, word for word; null when the inputs did not come from there.</summary>
    public IReadOnlyDictionary<string, string>? Fields { get; init; }

    /// <summary>What the brief is computed from; null while the fields do not yet make one.</summary>
    public BriefInputs? Inputs { get; init; }

    /// <summary>When it was discarded; the next thing that is kept brings it back.</summary>
    public DateTimeOffset? DiscardedAt { get; init; }

    /// <summary>Invented for demonstration.</summary>
    public bool Demonstration => Inputs?.Demonstration ?? false;
}
