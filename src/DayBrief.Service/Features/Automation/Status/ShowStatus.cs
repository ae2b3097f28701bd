using DayBrief.Service.Features.People;
using DayBrief.Service.Languages;
using Microsoft.AspNetCore.Http.HttpResults;

namespace DayBrief.Service.Features.Automation.Status;

/// <summary>What runs by itself: the page and its JSON.</summary>
internal static class ShowStatus
{
    internal const string Path = "/status";

    internal static void Map(WebApplication app, RouteGroupBuilder api)
    {
        app.MapGet(Path, Page).RequireAuthorization(Access.Instructor).ExcludeFromDescription();
        api.MapGet(Path, Json).RequireAuthorization(Access.Instructor).WithTags("Automation").WithName(nameof(ShowStatus))
            .WithSummary("What runs by itself: last and next runs, what came, flags, reminders, backups.");
    }

    private static RazorComponentResult<StatusPage> Page(HttpRequest request, StatusDesk desk) => new(new Dictionary<string, object?>
    {
        [nameof(StatusPage.Status)] = desk.View(),
        [nameof(StatusPage.In)] = Language.Of(request),
        [nameof(StatusPage.IsAsked)] = request.Query.ContainsKey("asked"),
    });

    private static Ok<StatusJson> Json(StatusDesk desk) => TypedResults.Ok(StatusJson.Of(desk.View()));
}
