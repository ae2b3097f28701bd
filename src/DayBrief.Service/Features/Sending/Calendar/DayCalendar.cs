using System.Globalization;
using DayBrief.Service.Features.Briefs;
using DayBrief.Service.Features.Briefs.Revisions;
using DayBrief.Service.Infrastructure;
using DayBrief.Service.Languages;

namespace DayBrief.Service.Features.Sending.Calendar;

/// <summary>Signed briefs as a calendar of their key times.</summary>
internal sealed class DayCalendar(RevisionStore revisions, BriefDesk desk, Installation installation)
{
    /// <param name="holding">The revision that holds of each field and day.</param>
    /// <param name="name">The field's.</param>
    /// <param name="language">Of the texts.</param>
    /// <param name="link">The address of a brief.</param>
    public byte[] Of(IEnumerable<Revision> holding, string name, Language language, Func<string, string> link)
    {
        var text = new CalendarText()
            .Line("BEGIN", "VCALENDAR")
            .Line("VERSION", "2.0")
            .Line("PRODID", "-//DayBrief//DayBrief//EN")
            .Line("CALSCALE", "GREGORIAN")
            .Line("METHOD", "PUBLISH")
            .Text("X-WR-CALNAME", name);
        foreach (var revision in holding)
        {
            foreach (var happening in Events(revision, language))
                Write(text, happening, revision, link(revision.BriefId));
        }

        return text.Line("END", "VCALENDAR").Bytes();
    }

    /// <summary>Those of the revision that holds, and cancelled those that only earlier ones had.</summary>
    private IEnumerable<CalendarEvent> Events(Revision holding, Language language)
    {
        var withdrawn = revisions.WithdrawalOf(holding.BriefId) is not null;
        var now = Of(holding).ToArray();
        var gone = revisions.OfDay(holding.SiteId, holding.Date)
            .TakeWhile(earlier => earlier.Id != holding.Id)
            .Reverse()
            .SelectMany(Of)
            .DistinctBy(earlier => earlier.Key)
            .Where(earlier => Array.TrueForAll(now, happening => happening.Key != earlier.Key))
            .Select(earlier => earlier with { IsCancelled = true });
        return now.Select(happening => happening with { IsCancelled = withdrawn }).Concat(gone);

        IEnumerable<CalendarEvent> Of(Revision revision) =>
            desk.Of(revision) is var made ? KeyTimeEvents.Of(made, Reader.Of(made.Brief.Site, language: language)) : [];
    }

    private void Write(CalendarText text, CalendarEvent happening, Revision revision, string link)
    {
        // One UID for a field and day, whichever brief it comes from: what another brief says takes the place of the event.
        // RFC 5546, 2.1.5: of two with one SEQUENCE the later DTSTAMP counts; a withdrawal makes no revision.
        var stamp = revisions.WithdrawalOf(revision.BriefId)?.At ?? revision.SignedAt;
        text.Line("BEGIN", "VEVENT")
            .Line("UID", installation.IdOf($"event {revision.SiteId} {revision.Date:yyyy-MM-dd} {happening.Key}").ToString())
            .Time("DTSTAMP", stamp)
            .Time("LAST-MODIFIED", stamp)
            .Line("SEQUENCE", revision.Number.ToString(CultureInfo.InvariantCulture))
            .Time("DTSTART", happening.From);
        if (happening.To is { } to)
            text.Time("DTEND", to);
        text.Text("SUMMARY", happening.Summary)
            .Text("DESCRIPTION", happening.Description)
            .Line("STATUS", happening.IsCancelled ? "CANCELLED" : "TENTATIVE")
            .Line("TRANSP", "TRANSPARENT")
            .Line("URL", link)
            .Line("END", "VEVENT");
    }
}
