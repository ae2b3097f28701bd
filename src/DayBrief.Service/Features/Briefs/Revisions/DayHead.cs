namespace DayBrief.Service.Features.Briefs.Revisions;

/// <summary>Which of all that was signed for one field and one day holds, in a row that costs little to read.</summary>
internal sealed record DayHead
{
    public required string SiteId { get; init; }

    public required string SiteName { get; init; }

    /// <summary>The field's IANA zone: its calendar says when its day is today.</summary>
    public required string TimeZone { get; init; }

    public required DateOnly Date { get; init; }

    public required string BriefId { get; init; }

    /// <summary>The revision's number.</summary>
    public required int Number { get; init; }

    /// <summary>How many have been signed for this field and day, whichever brief they belong to.</summary>
    public required int Place { get; init; }

    public required string SignedBy { get; init; }

    public required DateTimeOffset SignedAt { get; init; }

    /// <summary>Why it took the place of the one before; null for the first.</summary>
    public string? Reason { get; init; }

    public bool IsWithdrawn { get; init; }

    public string RevisionId => Revision.IdOf(BriefId, Number);

    public static DayHead Of(Revision revision, int place) => new()
    {
        SiteId = revision.SiteId,
        SiteName = revision.Inputs.Site.Name ?? revision.SiteId,
        TimeZone = revision.Inputs.Site.TimeZone ?? "UTC",
        Date = revision.Date,
        BriefId = revision.BriefId,
        Number = revision.Number,
        Place = place,
        SignedBy = revision.SignedBy,
        SignedAt = revision.SignedAt,
        Reason = revision.Reason,
    };
}
