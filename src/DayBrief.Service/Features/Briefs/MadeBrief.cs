using DayBrief.Days;
using DayBrief.Service.Features.Briefs.Revisions;

namespace DayBrief.Service.Features.Briefs;

/// <summary>A brief, what it was made of and the id it is kept under (null when it is not kept).</summary>
/// <param name="Id">The id.</param>
/// <param name="Inputs">What it was made of.</param>
/// <param name="Computed">As it was computed; for the instructor, who sees it beside what he overrules.</param>
internal sealed record MadeBrief(string? Id, BriefInputs Inputs, Brief Computed)
{
    /// <summary>As its readers get it, in every form: the instructor's figures stand in it instead of those that he overrules.</summary>
    public Brief Brief { get; } = Inputs.Judgement?.Of(Computed.Site, Inputs.Date) is { } judgement
        ? Computed with { Day = judgement.Over(Computed.Day) }
        : Computed;

    /// <summary>Signed, replaced, withdrawn: how it stands with its readers; null when it is not kept.</summary>
    public Standing? Standing { get; init; }
}

/// <summary>How a kept brief stands.</summary>
/// <param name="Revision">The revision that is shown; null for a draft.</param>
/// <param name="Latest">Number of the brief's last revision; 0 when none was signed.</param>
/// <param name="Withdrawal">It was taken back.</param>
internal sealed record Standing(Revision? Revision, int Latest, Withdrawal? Withdrawal)
{
    /// <summary>The revision before the one that is shown, to tell what changed.</summary>
    public MadeBrief? Before { get; init; }

    /// <summary>Its number; 0 where there is none.</summary>
    public int BeforeNumber { get; init; }

    /// <summary>The other briefs of its field and day, whose place it took.</summary>
    public IReadOnlyList<string> InsteadOf { get; init; } = [];

    /// <summary>Everything signed for its field and day, in the order in which each took the place of the one before.</summary>
    public IReadOnlyList<(string BriefId, int Number)> Order { get; init; } = [];

    /// <summary>This program computes just what was signed. If not, a later version of it shows the files as they were signed.</summary>
    public bool IsAsSigned { get; init; } = true;

    /// <summary>What has taken its place for its field and day; null while it holds.</summary>
    public DayHead? ReplacedBy { get; init; }

    public bool IsReplaced => ReplacedBy is not null;

    /// <summary>Nobody is to act on its figures any more.</summary>
    public bool IsVoid => IsReplaced || Withdrawal is not null;
}
