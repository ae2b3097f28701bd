namespace DayBrief.Service.Infrastructure;

/// <summary>What browsers may do with our pages: nothing from any other host, no framing, no guessing of types.</summary>
internal static class SecurityHeaders
{
    private const string Policy =
        "default-src 'self'; img-src 'self' data:; object-src 'none'; base-uri 'none'; form-action 'self'; frame-ancestors 'none'";

    public static void UseSecurityHeaders(this WebApplication app) =>
        app.Use((context, next) =>
        {
            // As the answer starts: where something breaks, what stood in it before is cleared.
            context.Response.OnStarting(() =>
            {
                Put(context);
                return Task.CompletedTask;
            });
            return next();
        });

    private static void Put(HttpContext context)
    {
        var headers = context.Response.Headers;
        headers.XContentTypeOptions = "nosniff";
        headers["Referrer-Policy"] = "same-origin";
        // The pages to try the API bring inline styles and scripts of their own.
        if (!context.Request.Path.StartsWithSegments("/api/docs"))
            headers.ContentSecurityPolicy = Policy;
    }
}
