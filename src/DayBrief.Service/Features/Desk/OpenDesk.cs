using System.Globalization;
using DayBrief.Service.Features.Arrivals;
using DayBrief.Service.Features.Briefs;
using DayBrief.Service.Features.Briefs.Revisions;
using DayBrief.Service.Features.People;
using DayBrief.Service.Features.Sites;
using DayBrief.Service.Features.Soundings;
using DayBrief.Service.Infrastructure;
using DayBrief.Service.Languages;
using Microsoft.AspNetCore.Http.HttpResults;

namespace DayBrief.Service.Features.Desk;

/// <summary>The desk's pages: what there is to do today, a new brief, one that was begun.</summary>
internal static class OpenDesk
{
    internal static void Map(WebApplication app)
    {
        app.MapGet("/desk", ShowDay).ExcludeFromDescription().RequireAuthorization(Access.Instructor);
        app.MapGet("/briefs/new", ShowNew).ExcludeFromDescription().RequireAuthorization(Access.Instructor);
        app.MapGet("/desk/{id}", Show).ExcludeFromDescription().RequireAuthorization(Access.Instructor);
    }

    internal static RazorComponentResult<DeskPage> Page(DeskView view, int status = StatusCodes.Status200OK) =>
        new(new Dictionary<string, object?> { [nameof(DeskPage.Of)] = view }) { StatusCode = status };

    private static Results<RazorComponentResult<DeskPage>, RazorComponentResult<NotFoundPage>> Show(
        string id, HttpContext context, BriefStore briefs, Keeping keeping, DeskViews views) =>
        briefs.Find(id) is { } draft ? Page(views.Of(keeping.Open(draft), context)) : NotFoundPage.Result("brief [not found]");

    /// <summary>A desk that keeps nothing before something is entered; the site's newest ascent is laid out already.</summary>
    private static RazorComponentResult<DeskPage> ShowNew(
        HttpContext context, string? site, string? like, SiteStore sites, SoundingStore soundings, BriefStore briefs, BriefDesk desk, DeskViews views)
    {
        var chosen = sites.All() is { Count: > 0 } all ? all.FirstOrDefault(one => one.Id == site) ?? all[0] : null;
        var fields = new DeskFields(new Dictionary<string, string>
        {
            ["site"] = chosen?.Id ?? "",
            ["date"] = Today(chosen, desk).ToString("yyyy-MM-dd", CultureInfo.InvariantCulture),
            ["preparedBy"] = DeskViews.Editor(context) ?? "",
            ["kept"] = soundings.Newest(1) is [{ } newest] && desk.Now - newest.ReceivedAt < TimeSpan.FromHours(12) && newest.IsFetched ? newest.Id : "",
        });
        var before = like is null ? null : briefs.Find(like);
        foreach (var (field, value) in before is null ? new Dictionary<string, string>() : AsBefore.Of(before))
            fields[field] = value;
        var blank = new Draft { Id = "", SiteId = fields["site"], Date = desk.Today, EditedAt = desk.Now };
        return Page(views.Of(new(blank, fields, null, [], null) { LikeThatOf = before?.Date }, context));
    }

    private static DateOnly Today(SiteJson? site, BriefDesk desk) =>
        site is null ? desk.Today : LocalClock.DateAt(desk.Now, site.ToSite().TimeZone);

    private static RazorComponentResult<DeskDayPage> ShowDay(
        HttpContext context, SiteStore sites, BriefStore briefs, RevisionStore revisions, AsBefore before, DayNews news, BriefDesk desk)
    {
        var language = Language.Of(context.Request);
        return new(new Dictionary<string, object?>
        {
            [nameof(DeskDayPage.In)] = language,
            [nameof(DeskDayPage.Of)] = DeskDay.Of(sites, briefs, revisions, before, news, desk, language),
        });
    }
}
