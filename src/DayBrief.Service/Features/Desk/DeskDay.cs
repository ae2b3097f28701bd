using DayBrief.Service.Features.Arrivals;
using DayBrief.Service.Features.Briefs;
using DayBrief.Service.Features.Briefs.Revisions;
using DayBrief.Service.Features.Sites;
using DayBrief.Service.Infrastructure;
using DayBrief.Service.Languages;

namespace DayBrief.Service.Features.Desk;

/// <summary>One site's work of today.</summary>
internal sealed record DeskDaySite(string Id, string Name, string Date, IReadOnlyList<DeskDayBrief> Briefs, IReadOnlyList<string> News, DeskDayBefore? Before);

/// <summary>The site's last brief, which a new one can begin like.</summary>
internal sealed record DeskDayBefore(string Id, string Words);

/// <summary>One brief of today and how far it is.</summary>
internal sealed record DeskDayBrief(string Id, string State, bool NeedsWork);

/// <summary>What there is to do today, site by site.</summary>
internal static class DeskDay
{
    public static IReadOnlyList<DeskDaySite> Of(SiteStore sites, BriefStore briefs, RevisionStore revisions, AsBefore before, DayNews news, BriefDesk desk, Language language) =>
    [
        .. sites.All().Select(site =>
        {
            var reader = Reader.Of(site.ToSite(), null, language);
            var today = LocalClock.DateAt(desk.Now, site.ToSite().TimeZone);
            return new DeskDaySite(
                site.Id!,
                site.Name ?? site.Id!,
                reader.Date(today),
                [.. briefs.On(today).Where(draft => draft.SiteId == site.Id && draft is { Demonstration: false, DiscardedAt: null }).Select(draft => BriefOf(draft, revisions, reader))],
                [.. Reminders(site.Id!, today, revisions, news, reader), .. news.Of(site.Id!, today, reader.Zone, language)],
                before.Last(site.Id!, today) is { } last ? new(last.Id, last.Date == today.AddDays(-1) ? reader["Begin as yesterday"] : reader.Say($"Begin as on {reader.Date(last.Date)}")) : null);
        }),
    ];

    /// <summary>Stands until the day's brief is signed.</summary>
    private static IEnumerable<string> Reminders(string siteId, DateOnly today, RevisionStore revisions, DayNews news, Reader reader) =>
        news.Reminder(siteId, today) is { } reminder && revisions.Holding(siteId, today) is null
            ? [reader.Say($"Today's brief was not signed by {reader.Time(reminder.At)}.")]
            : [];

    private static DeskDayBrief BriefOf(Draft draft, RevisionStore revisions, Reader reader)
    {
        var kept = reader.Say($"draft kept {reader.Time(draft.EditedAt)} by {reader[draft.EditedBy ?? "somebody"]}");
        if (revisions.Latest(draft.Id) is not { } latest)
            return new(draft.Id, reader.Say($"Not signed; {kept}."), NeedsWork: true);
        if (revisions.WithdrawalOf(draft.Id) is { } withdrawal)
            return new(draft.Id, reader.Say($"Withdrawn {reader.Time(withdrawal.At)} by {withdrawal.By}: {withdrawal.Reason}"), NeedsWork: true);
        if (revisions.Holding(latest.SiteId, latest.Date) is { } holding && holding.Id != latest.Id)
            return new(draft.Id, reader.Say($"Replaced by revision {holding.Number}, signed {reader.Time(holding.SignedAt)} by {holding.SignedBy}."), NeedsWork: false);
        return latest.DraftVersion == draft.Version
            ? new(draft.Id, reader.Say($"Revision {latest.Number} signed {reader.Time(latest.SignedAt)} by {latest.SignedBy}."), NeedsWork: false)
            : new(draft.Id, reader.Say($"Revision {latest.Number} is published; since then a {kept}, not signed."), NeedsWork: true);
    }
}
