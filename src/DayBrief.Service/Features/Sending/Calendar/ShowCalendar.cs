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
    private const int Looked = 30;

    internal static void Map(WebApplication app)
    {
        app.MapGet("/fields/{site}/day.ics", OfSite).AskReaderCode(context => context.GetRouteValue("site") as string).ExcludeFromDescription();
        app.MapGet("/briefs/{id}/day.ics", OfBrief).AskReaderCode(SiteOf).ExcludeFromDescription();
    }

    private static Results<FileContentHttpResult, RazorComponentResult<NotFoundPage>> OfSite(
        string site, HttpContext context, SiteStore sites, RevisionStore revisions, DayCalendar calendar, PublicAddress address, BriefDesk desk)
    {
        var last = revisions.LastOfSite(site, Looked).GroupBy(revision => revision.BriefId).Select(brief => brief.MaxBy(revision => revision.Number)!).ToArray();
        if (last.Length == 0 || sites.Find(site) is not { Sending.Calendar: true } field)
            return NotFoundPage.Result("page [not found]");
        var today = LocalClock.DateAt(desk.Now, field.ToSite().TimeZone);
        var newest = last.Max(revision => revision.Date);
        var shown = last.Where(revision => revision.Date >= (today < newest ? today : newest)).OrderBy(revision => revision.Date);
        return File(shown, field, context, calendar, address);
    }

    private static Results<FileContentHttpResult, RazorComponentResult<NotFoundPage>> OfBrief(
        string id, HttpContext context, SiteStore sites, RevisionStore revisions, DayCalendar calendar, PublicAddress address) =>
        revisions.Latest(id) is { } latest && sites.Find(latest.SiteId) is { Sending.Calendar: true } field
            ? File([latest], field, context, calendar, address)
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
