namespace DayBrief.Service.Features.People;

/// <summary>Tells requests that change something and were sent by a page of another origin.</summary>
/// <remarks>W3C Fetch Metadata, <c>Sec-Fetch-Site</c>; where a browser does not send it (plain HTTP on a network), the
/// <c>Origin</c> of RFC 6454. Programs send neither, and are not meant here. It stands beside the form tokens, and covers
/// what has no form.</remarks>
internal static class OtherOrigin
{
    public static bool Sent(HttpRequest request)
    {
        if (HttpMethods.IsGet(request.Method) || HttpMethods.IsHead(request.Method) || HttpMethods.IsOptions(request.Method))
            return false;
        if (request.Headers["Sec-Fetch-Site"].FirstOrDefault() is { Length: > 0 } site)
            return site is not ("same-origin" or "none");
        // Only host and port: the scheme may end at a proxy.
        return request.Headers.Origin.FirstOrDefault() is { Length: > 0 } origin
            && !(Uri.TryCreate(origin, UriKind.Absolute, out var from)
                && string.Equals(from.Authority, request.Host.Value, StringComparison.OrdinalIgnoreCase));
    }
}
