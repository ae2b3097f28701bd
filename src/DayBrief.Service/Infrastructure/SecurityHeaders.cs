namespace DayBrief.Service.Infrastructure;

/// <summary>What browsers may do with our pages: nothing from any other host, no framing, no guessing of types.</summary>
internal static class SecurityHeaders
{
    private const string Policy =
        "default-src 'self'; img-src 'self' data:; object-src 'none'; base-uri 'none'; form-action 'self'; frame-ancestors 'none'";

    public static void UseSecurityHeaders(this WebApplication app) =>
        app.Use((context, next) =>
        {
            var headers = context.Response.Headers;
            headers.XContentTypeOptions = "nosniff";
            headers["Referrer-Policy"] = "same-origin";
            // The pages to try the API bring inline styles and scripts of their own.
            if (!context.Request.Path.StartsWithSegments("/api/docs"))
                headers.ContentSecurityPolicy = Policy;
            return next();
        });
}
