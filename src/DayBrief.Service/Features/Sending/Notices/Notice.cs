using DayBrief.Service.Features.Briefs.Revisions;

namespace DayBrief.Service.Features.Sending.Notices;

/// <summary>Something that a site's readers are told: a revision was signed, or its brief taken back.</summary>
internal sealed record Notice(Revision Revision, Withdrawal? Withdrawal = null)
{
    public AnnouncementKind Kind => this switch
    {
        { Withdrawal: not null } => AnnouncementKind.Withdrawn,
        { Revision.Number: 1 } => AnnouncementKind.Published,
        _ => AnnouncementKind.Amended,
    };

    /// <summary>The same for the same revision or withdrawal.</summary>
    public string Id => Withdrawal is { } taken ? $"{Revision.BriefId}-w{taken.At.ToUnixTimeMilliseconds()}" : Revision.Id;

    public DateTimeOffset At => Withdrawal?.At ?? Revision.SignedAt;

    public string By => Withdrawal?.By ?? Revision.SignedBy;

    public string? Reason => Withdrawal is { } taken ? taken.Reason : Revision.Reason;
}
