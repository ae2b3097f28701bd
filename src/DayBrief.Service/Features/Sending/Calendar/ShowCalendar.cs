using DayBrief.Service.Features.Briefs;
using DayBrief.Service.Features.Briefs.Revisions;
using DayBrief.Service.Features.People;
using DayBrief.Service.Features.Sites;
using DayBrief.Service.Infrastructure;
using DayBrief.Service.Languages;
using Microsoft.AspNetCore.Http.HttpResults;
using Microsoft.Net.Http.Headers;

namespace DayBrief.Service.Features.Sending.Calendar;

/// <summary>The key times of a site's signed briefs of today and later, else of its newest; or of one brief.</summary>
internal static class ShowCalendar
{
    private const int Most = 30;

    internal static void Map(WebApplication app)
    {
        app.MapGet("/fields/{site}/day.ics", OfSite).AskReaderCode(context => context.GetRouteValue("site") as string).ExcludeFromDescription();
        app.MapGet("/briefs/{id}/day.ics", OfBrief).AskReaderCode(SiteOf).ExcludeFromDescription();
    }

    private static Results<FileContentHttpResult, RazorComponentResult<NotFoundPage>> OfSite(
        string site, HttpContext context, SiteStore sites, RevisionStore revisions, DayHeadStore heads, DayCalendar calendar, PublicAddress address, BriefDesk desk)
    {
        if (sites.Find(site) is not { Sending.Calendar: true } field)
            return NotFoundPage.Result("page [not found]");
        var today = LocalClock.DateAt(desk.Now, field.ToSite().TimeZone);
        DayHead[] shown = [.. heads.Between(today, DateOnly.MaxValue, site).OrderBy(head => head.Date).Take(Most)];
        if (shown.Length == 0)
            shown = [.. heads.Before(today, site).Take(1)];
        return shown.Length == 0
            ? NotFoundPage.Result("page [not found]")
            : File(shown.Select(head => revisions.Find(head.BriefId, head.Number)!), field, context, calendar, address);
    }

    private static Results<FileContentHttpResult, RazorComponentResult<NotFoundPage>> OfBrief(
        string id, HttpContext context, SiteStore sites, RevisionStore revisions, DayCalendar calendar, PublicAddress address) =>
        revisions.Latest(id) is { } latest && sites.Find(latest.SiteId) is { Sending.Calendar: true } field
            ? File([revisions.Holding(latest.SiteId, latest.Date) ?? latest], field, context, calendar, address)
            : NotFoundPage.Result("page [not found]");

    private static string? SiteOf(HttpContext context) =>
        context.RequestServices.GetRequiredService<RevisionStore>().Latest(context.GetRouteValue("id") as string ?? "")?.SiteId;

    private static FileContentHttpResult File(IEnumerable<Revision> shown, SiteJson field, HttpContext context, DayCalendar calendar, PublicAddress address)
    {
        var language = Language.OfSite(field.Language);
        var bytes = calendar.Of(shown, field.Name ?? "DayBrief", language, id => address.Link($"/briefs/{id}", context.Request));
        context.Response.Headers.CacheControl = "no-cache";
        return TypedResults.File(bytes, CalendarText.MediaType, entityTag: new EntityTagHeaderValue($"\"{Revision.HashOf(bytes)[..32]}\""));
    }
}
