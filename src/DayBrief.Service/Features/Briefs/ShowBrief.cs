using DayBrief.Service.Infrastructure;
using Microsoft.AspNetCore.Http.HttpResults;

namespace DayBrief.Service.Features.Briefs;

/// <summary>The brief as JSON and as the phone page.</summary>
internal static class ShowBrief
{
    internal static void MapApi(RouteGroupBuilder api) =>
        api.MapGet("/briefs/{id}", ShowJson).WithName(nameof(ShowBrief)).WithSummary("A brief as JSON.");

    internal static void MapPages(WebApplication app)
    {
        app.MapGet("/", ShowCurrent).ExcludeFromDescription();
        app.MapGet("/briefs", ShowAll).ExcludeFromDescription();
        app.MapGet("/briefs/{id}", ShowPage).ExcludeFromDescription();
    }

    internal static RazorComponentResult<BriefPage> Page(MadeBrief made, string? units, DateTimeOffset now) =>
        new(new Dictionary<string, object?>
        {
            [nameof(BriefPage.Made)] = made,
            [nameof(BriefPage.For)] = Reader.Of(made.Brief.Site, units),
            [nameof(BriefPage.Now)] = now,
        });

    private static Results<Ok<BriefJson>, ProblemHttpResult> ShowJson(string id, BriefDesk desk) =>
        desk.Find(id) is { } made
            ? TypedResults.Ok(BriefJson.Of(made))
            : TypedResults.Problem(Problem.NotFound($"No brief is kept under \"{id}\"."));

    private static Results<RazorComponentResult<BriefPage>, RedirectHttpResult> ShowCurrent(BriefDesk desk, string? units) =>
        desk.Current() is { } made ? Page(made, units, desk.Now) : TypedResults.Redirect("/briefs/new");

    private static Results<RazorComponentResult<BriefPage>, RazorComponentResult<NotFoundPage>> ShowPage(string id, BriefDesk desk, string? units) =>
        desk.Find(id) is { } made ? Page(made, units, desk.Now) : NotFoundPage.Result("brief");

    private static RazorComponentResult<BriefList> ShowAll(BriefStore briefs) =>
        new(new Dictionary<string, object?> { [nameof(BriefList.Briefs)] = briefs.All() });
}
