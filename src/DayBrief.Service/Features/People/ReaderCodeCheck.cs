using DayBrief.Service.Infrastructure;

namespace DayBrief.Service.Features.People;

/// <summary>Asks for a site's code before its briefs are read; nothing where the site asks for none.</summary>
internal static class ReaderCodeCheck
{
    /// <summary>For routes that show something of a site. <paramref name="siteOf"/> tells which; null for nothing to protect.</summary>
    public static TBuilder AskReaderCode<TBuilder>(this TBuilder routes, Func<HttpContext, string?> siteOf)
        where TBuilder : IEndpointConventionBuilder =>
        routes.AddEndpointFilter(async (call, next) =>
            siteOf(call.HttpContext) is { } site && !MayRead(call.HttpContext, site)
                ? Ask(call.HttpContext.Request, site)
                : await next(call));

    /// <summary>The site asks for no code, or this reader has given it or has signed in.</summary>
    public static bool MayRead(HttpContext context, string site)
    {
        var codes = context.RequestServices.GetRequiredService<ReaderCodes>();
        return !codes.Asks(site) || Who.Of(context) is not null || codes.IsRemembered(context, site);
    }

    private static IResult Ask(HttpRequest request, string site)
    {
        var page = $"/fields/{Uri.EscapeDataString(site)}/code";
        return request.Path.StartsWithSegments("/api")
            ? TypedResults.Problem(Problem.Refused(
                StatusCodes.Status401Unauthorized,
                "The site asks for its code.",
                $"Send an API key as {ApiKeyHandler.Header}, or give the code at {page} and send its cookie.",
                ApiKeyHandler.Header,
                request.Path))
            : TypedResults.Redirect($"{page}?returnUrl={Uri.EscapeDataString($"{request.Path}{request.QueryString}")}");
    }
}
