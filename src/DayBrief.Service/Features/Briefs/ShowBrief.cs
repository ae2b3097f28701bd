using DayBrief.Service.Infrastructure;

namespace DayBrief.Service.Features.Briefs;

/// <summary>The brief as JSON and as the phone page.</summary>
internal static class ShowBrief
{
    internal static void MapApi(RouteGroupBuilder api) =>
        api.MapGet("/briefs/{id}", ShowJson).WithName(nameof(ShowBrief)).WithSummary("A brief as JSON.").Produces<BriefJson>();

    internal static void MapPages(RouteGroupBuilder app)
    {
        app.MapGet("/", ShowCurrent).ExcludeFromDescription();
        app.MapGet("/fields/{site}", ShowCurrent).ExcludeFromDescription();
        app.MapGet("/briefs/{id}", ShowPage).ExcludeFromDescription();
        app.MapGet("/briefs/{id}/revisions/{number:int}", ShowRevision).ExcludeFromDescription();
    }

    private static IResult ShowJson(string id, BriefDesk desk) => desk.Find(id) switch
    {
        null => TypedResults.Problem(Problem.NotFound($"No brief is kept under \"{id}\".")),
        // A later program that computes other figures gives what was signed.
        { Standing: { IsAsSigned: false, Revision: { } revision } } => TypedResults.Content(revision.Content, "application/json; charset=utf-8"),
        { } made => TypedResults.Ok(BriefJson.Of(made)),
    };

    private static IResult ShowCurrent(HttpContext context, string? site, CurrentBrief current, BriefPages pages) =>
        current.For(site, context) is { } made
            ? pages.Of(made, context)
            : site is null ? TypedResults.Redirect("/briefs") : WaitingPage.Result(context.Request);

    private static IResult ShowPage(string id, HttpContext context, BriefDesk desk, BriefPages pages) =>
        desk.Find(id) is { } made ? pages.Of(made, context) : NotFoundPage.Result("brief [not found]");

    private static IResult ShowRevision(string id, int number, HttpContext context, BriefDesk desk, BriefPages pages) =>
        desk.Find(id, number) is { } made ? pages.Of(made, context) : NotFoundPage.Result("revision [not found]");
}
