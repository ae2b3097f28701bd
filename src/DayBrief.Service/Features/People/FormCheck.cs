using DayBrief.Service.Languages;
using Microsoft.AspNetCore.Antiforgery;

namespace DayBrief.Service.Features.People;

/// <summary>Checks that a form was sent from a page of ours (the framework's antiforgery token, which <c>PostForm</c> brings).</summary>
/// <remarks>The check is a filter and not the framework's middleware, because it depends on who sends: programs with a key have
/// no page, and in a trial nobody has a session that another page could misuse (<see cref="OtherOrigin"/> stands there).</remarks>
internal static class FormCheck
{
    /// <summary>Every POST of the routes; with <paramref name="always"/> also of those who have not signed in, for forms that sign somebody in.</summary>
    public static TBuilder RequireForm<TBuilder>(this TBuilder routes, bool always = false)
        where TBuilder : IEndpointConventionBuilder =>
        routes.AddEndpointFilter(async (call, next) =>
            await IsOursAsync(call.HttpContext, always)
                ? await next(call)
                : NoticePage.Result(
                    StatusCodes.Status400BadRequest,
                    Language.Text("This form is too old"),
                    Language.Text("It was made before somebody signed in or out, or not by this service. Go back, reload the page and send it again.")));

    private static async Task<bool> IsOursAsync(HttpContext context, bool always) =>
        Who.Of(context) switch
        {
            { ByKey: true } => true,
            null when !always => true,
            _ => await context.RequestServices.GetRequiredService<IAntiforgery>().IsRequestValidAsync(context),
        };
}
