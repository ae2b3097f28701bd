using DayBrief.Service.Features.Technique;
using DayBrief.Service.Infrastructure;
using DayBrief.Service.Languages;
using Hangfire;
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
        app.MapGet("/fields/{site}", ShowCurrent).ExcludeFromDescription();
        app.MapGet("/briefs/{id}", ShowPage).ExcludeFromDescription();
        app.MapGet("/briefs/{id}/revisions/{number:int}", ShowRevision).ExcludeFromDescription();
    }

    private static RazorComponentResult<PhonePage> Page(MadeBrief made, HttpContext context, BriefDesk desk, TechniqueDesk technique, IBackgroundJobClient jobs)
    {
        var pilot = Pilot.Of(context.Request);
        if (context.Request.Query.ContainsKey("glider"))
            context.Response.Cookies.Append(Pilot.Cookie, pilot.Query, Remembered(desk.Now));
        var reader = Reader.Of(made.Brief.Site, context.Request.Query["units"].FirstOrDefault(), Language.Of(context.Request));
        return new(new Dictionary<string, object?>
        {
            [nameof(PhonePage.Made)] = made,
            [nameof(PhonePage.For)] = reader,
            [nameof(PhonePage.Now)] = desk.Now,
            [nameof(PhonePage.Technique)] = TechniqueView.For(made.Brief, pilot, reader.IsMetric, made.Inputs.InstructorNote, technique, jobs),
        });
    }

    private static CookieOptions Remembered(DateTimeOffset now) =>
        new() { Expires = now.AddYears(1), HttpOnly = true, SameSite = SameSiteMode.Lax, IsEssential = true };

    private static Results<Ok<BriefJson>, ProblemHttpResult> ShowJson(string id, BriefDesk desk) =>
        desk.Find(id) is { } made
            ? TypedResults.Ok(BriefJson.Of(made))
            : TypedResults.Problem(Problem.NotFound($"No brief is kept under \"{id}\"."));

    private static Results<RazorComponentResult<PhonePage>, RedirectHttpResult> ShowCurrent(
        HttpContext context, string? site, CurrentBrief current, BriefDesk desk, TechniqueDesk technique, IBackgroundJobClient jobs) =>
        current.For(site) is { } made ? Page(made, context, desk, technique, jobs) : TypedResults.Redirect("/briefs");

    private static Results<RazorComponentResult<PhonePage>, RazorComponentResult<NotFoundPage>> ShowPage(
        string id, HttpContext context, BriefDesk desk, TechniqueDesk technique, IBackgroundJobClient jobs) =>
        desk.Find(id) is { } made ? Page(made, context, desk, technique, jobs) : NotFoundPage.Result("brief");

    private static Results<RazorComponentResult<PhonePage>, RazorComponentResult<NotFoundPage>> ShowRevision(
        string id, int number, HttpContext context, BriefDesk desk, TechniqueDesk technique, IBackgroundJobClient jobs) =>
        desk.Find(id, number) is { } made ? Page(made, context, desk, technique, jobs) : NotFoundPage.Result("revision");
}
