using DayBrief.Service.Features.Briefs.Revisions;

namespace DayBrief.Service.Features.Sending.Notices;

/// <summary>Reads what was signed and withdrawn as notices. Keeps nothing itself: the signed record is what counts.</summary>
internal sealed class NoticeStore(RevisionStore revisions)
{
    /// <summary>All since a moment, oldest first.</summary>
    public IReadOnlyList<Notice> Since(DateTimeOffset moment) =>
    [
        .. revisions.SignedSince(moment).Select(revision => new Notice(revision))
            .Concat(Withdrawn(moment))
            .OrderBy(notice => notice.At),
    ];

    /// <summary>The latest of a site, newest first.</summary>
    public IReadOnlyList<Notice> Latest(string siteId, int most) =>
    [
        .. revisions.LastOfSite(siteId, most).Select(revision => new Notice(revision))
            .Concat(Withdrawn(DateTimeOffset.UnixEpoch).Where(notice => notice.Revision.SiteId == siteId))
            .OrderByDescending(notice => notice.At)
            .Take(most),
    ];

    /// <summary>One by its brief and number, or its withdrawal; null when a later withdrawal has taken its place.</summary>
    public Notice? Find(string briefId, int number, DateTimeOffset? withdrawnAt)
    {
        if (revisions.Find(briefId, number) is not { } revision)
            return null;
        if (withdrawnAt is not { } at)
            return new(revision);
        var withdrawal = revisions.WithdrawnSince(at).FirstOrDefault(taken => taken.BriefId == briefId).Withdrawal;
        return withdrawal?.At.ToUnixTimeMilliseconds() == at.ToUnixTimeMilliseconds() ? new(revision, withdrawal) : null;
    }

    private IEnumerable<Notice> Withdrawn(DateTimeOffset moment)
    {
        foreach (var (briefId, withdrawal) in revisions.WithdrawnSince(moment))
        {
            if (revisions.Of(briefId).LastOrDefault(revision => revision.SignedAt <= withdrawal.At) is { } revision)
                yield return new(revision, withdrawal);
        }
    }
}
