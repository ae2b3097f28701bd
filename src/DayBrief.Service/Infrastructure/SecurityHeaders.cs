namespace DayBrief.Service.Infrastructure;

/// <summary>What browsers may do with our pages: nothing from any other host, no framing, no guessing of types.</summary>
internal static class SecurityHeaders
{
    private const string Policy =
        "default-src 'self'; img-src 'self' data:; object-src 'none'; base-uri 'none'; form-action 'self'; frame-ancestors 'none'";

    /// <summary>The pages to try the API bring inline styles and scripts of their own.</summary>
    private const string OfApiPages = "style-src 'self' 'unsafe-inline'; script-src 'self' 'unsafe-inline'";

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
        headers.ContentSecurityPolicy = context.Request.Path.StartsWithSegments("/api/docs") ? $"{Policy}; {OfApiPages}" : Policy;
        // All fields with the addresses that they fetch from: not for a cache that others share.
        if (context.Request.Path == "/sites/export")
            headers.CacheControl = "no-store";
    }
}
