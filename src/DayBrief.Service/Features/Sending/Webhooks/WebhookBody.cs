using DayBrief.Service.Features.Briefs.Revisions;
using DayBrief.Service.Features.Sending.Notices;
using DayBrief.Service.Features.Sites;
using DayBrief.Service.Infrastructure;

namespace DayBrief.Service.Features.Sending.Webhooks;

/// <summary>What a webhook is told. Addresses are null when the installation has no public address set.</summary>
internal sealed record WebhookBody
{
    /// <summary>published, amended or withdrawn.</summary>
    public required AnnouncementKind Event { get; init; }

    public required string BriefId { get; init; }

    public required WebhookSite Site { get; init; }

    public required DateOnly Date { get; init; }

    public required int Revision { get; init; }

    public required string SignedBy { get; init; }

    public required DateTimeOffset SignedAt { get; init; }

    public required string? WithdrawnBy { get; init; }

    public required DateTimeOffset? WithdrawnAt { get; init; }

    /// <summary>Why it was amended or withdrawn.</summary>
    public required string? Reason { get; init; }

    public required string? Sentence { get; init; }

    /// <summary>Id of the other brief of this field and day whose place it took; null where there was none.</summary>
    public required string? Replaces { get; init; }

    /// <summary>Against the revision before.</summary>
    public required IReadOnlyList<RevisionChange> Changes { get; init; }

    /// <summary>SHA-256 of the signed record.</summary>
    public required string Hash { get; init; }

    public required string? Page { get; init; }

    public required string? Json { get; init; }

    public required string? Pdf { get; init; }

    public required string Advice { get; init; }

    public static WebhookBody Of(Notice notice, NoticeText text, SiteJson site, PublicAddress address)
    {
        var revision = notice.Revision;
        return new()
        {
            Event = notice.Kind,
            BriefId = revision.BriefId,
            Site = new(site.Id, site.Name),
            Date = revision.Date,
            Revision = revision.Number,
            SignedBy = revision.SignedBy,
            SignedAt = revision.SignedAt,
            WithdrawnBy = notice.Withdrawal?.By,
            WithdrawnAt = notice.Withdrawal?.At,
            Reason = notice.Reason,
            Replaces = revision.Replaces,
            Sentence = text.Sentence,
            Changes = text.Changes,
            Hash = revision.Hash,
            Page = address.Link($"/briefs/{revision.BriefId}"),
            Json = address.Link($"/api/v1/briefs/{revision.BriefId}"),
            Pdf = address.Link($"/briefs/{revision.BriefId}/sheet.pdf"),
            Advice = Briefs.Advice.Standing,
        };
    }
}

internal sealed record WebhookSite(string? Id, string? Name);

/// <summary>The body of a test: an event of its own, and nothing of any day.</summary>
internal sealed record WebhookTest(string Event, WebhookSite Site);
