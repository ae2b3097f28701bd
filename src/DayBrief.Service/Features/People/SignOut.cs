using Microsoft.AspNetCore.Http.HttpResults;

namespace DayBrief.Service.Features.People;

/// <summary>Ends the session of this browser.</summary>
internal static class SignOut
{
    internal static void Map(WebApplication app) =>
        app.MapPost("/sign-out", (Delegate)HandleAsync).ExcludeFromDescription().RequireForm();

    private static async Task<RedirectHttpResult> HandleAsync(HttpContext context)
    {
        await Sessions.EndAsync(context);
        return TypedResults.Redirect("/");
    }
}
