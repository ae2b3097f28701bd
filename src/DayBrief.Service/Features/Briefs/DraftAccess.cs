using DayBrief.Service.Features.Briefs.Revisions;
using DayBrief.Service.Features.People;
using DayBrief.Service.Infrastructure;

namespace DayBrief.Service.Features.Briefs;

/// <summary>Who may see what nobody has signed: those who prepare briefs, and in a trial whoever sits at the machine. Everybody
/// else is told that there is nothing yet.</summary>
internal static class DraftAccess
{
    public static bool MayRead(HttpContext context) =>
        Who.Of(context) is { Role: >= Role.Instructor } || context.RequestServices.GetRequiredService<Trial>().Allows(context);

    /// <summary>For routes that show the brief named by <c>id</c>.</summary>
    public static TBuilder HideDrafts<TBuilder>(this TBuilder routes)
        where TBuilder : IEndpointConventionBuilder =>
        routes.AddEndpointFilter(async (call, next) => IsHidden(call.HttpContext) ? Refuse(call.HttpContext.Request) : await next(call));

    private static bool IsHidden(HttpContext context) =>
        context.GetRouteValue("id") is string id
        && context.RequestServices.GetRequiredService<BriefStore>().Find(id) is { Demonstration: false }
        && !context.RequestServices.GetRequiredService<RevisionStore>().IsSigned(id)
        && (HttpMethods.IsGet(context.Request.Method) || HttpMethods.IsHead(context.Request.Method))
        && !MayRead(context);

    /// <summary>A page shows by itself when there is something to see.</summary>
    private static IResult Refuse(HttpRequest request) => request.Path.StartsWithSegments("/api")
        ? TypedResults.Problem(Problem.NotFound($"No brief is published under \"{request.RouteValues["id"]}\"."))
        : WaitingPage.Result(request, StatusCodes.Status404NotFound);
}
