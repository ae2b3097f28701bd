using System.Text.Json;
using System.Text.Json.Nodes;
using DayBrief.Service.Features.Briefs.Revisions;
using DayBrief.Service.Features.Technique;
using DayBrief.Service.Infrastructure;
using Hangfire;

namespace DayBrief.Service.Features.Briefs;

/// <summary>The brief as JSON and as the phone page.</summary>
internal static class ShowBrief
{
    internal static void MapApi(RouteGroupBuilder api) =>
        api.MapGet("/briefs/{id}", ShowJson).WithName(nameof(ShowBrief)).WithSummary("A brief as JSON. Its technique is computed in the background, technique.ready says whether it is there; ?technique=wait waits for it.").Produces<BriefJson>();

    internal static void MapPages(RouteGroupBuilder app)
    {
        app.MapGet("/", ShowCurrent).ExcludeFromDescription();
        app.MapGet("/fields/{site}", ShowCurrent).ExcludeFromDescription();
        app.MapGet("/briefs/{id}", ShowPage).ExcludeFromDescription();
        app.MapGet("/briefs/{id}/revisions/{number:int}", ShowRevision).ExcludeFromDescription();
    }

    private static IResult ShowJson(string id, string? technique, BriefDesk desk, TechniqueDesk studies, IBackgroundJobClient jobs, CancellationToken stopping) => desk.Find(id) switch
    {
        null => TypedResults.Problem(Problem.NotFound($"No brief is kept under \"{id}\".")),
        // A later program that computes other figures gives what was signed, and how it stands now.
        { Standing: { IsAsSigned: false, Revision: { } revision } standing } => TypedResults.Content(AsSigned(revision, standing), "application/json; charset=utf-8"),
        { } made => TypedResults.Ok(technique == "wait"
            ? BriefJson.WithTechnique(made, studies, stopping)
            : BriefJson.Of(made) with { Technique = TechniqueJson.SoFar(made.Brief, Reader.Of(made.Brief.Site).Figures, studies, jobs) }),
    };

    private static string AsSigned(Revision revision, Standing standing)
    {
        var content = JsonNode.Parse(revision.Content)!.AsObject();
        content["standing"] = JsonSerializer.SerializeToNode(StandingJson.Of(standing), Json.Line);
        content["replacedBy"] = standing.ReplacedBy?.BriefId;
        return content.ToJsonString(Json.Line);
    }

    private static IResult ShowCurrent(HttpContext context, string? site, CurrentBrief current, BriefPages pages) =>
        AskedBrief.Of(context, () => current.For(site, context)) is { } made
            ? pages.Of(made, context)
            : site is null ? TypedResults.Redirect("/briefs") : WaitingPage.Result(context.Request);

    private static IResult ShowPage(string id, HttpContext context, BriefDesk desk, BriefPages pages) =>
        AskedBrief.Of(context, () => desk.Find(id)) is { } made ? pages.Of(made, context) : NotFoundPage.Result("brief [not found]");

    private static IResult ShowRevision(string id, int number, HttpContext context, BriefDesk desk, BriefPages pages) =>
        desk.Find(id, number) is { } made ? pages.Of(made, context) : NotFoundPage.Result("revision [not found]");
}
