using System.Globalization;
using Microsoft.Net.Http.Headers;

namespace DayBrief.Service.Features.Sites;

/// <summary>The version of a site as an entity tag (RFC 9110): given with it, asked for by If-Match and If-None-Match.</summary>
internal static class SiteTag
{
    public static void Put(HttpResponse response, int version) =>
        response.Headers.ETag = $"\"{version.ToString(CultureInfo.InvariantCulture)}\"";

    /// <summary>The request says what must be there, be it "whatever is there".</summary>
    public static bool IsGiven(HttpRequest request) =>
        request.Headers.IfMatch.Count > 0 || request.GetTypedHeaders().IfNoneMatch.Any(tag => tag.Equals(EntityTagHeaderValue.Any));

    /// <summary>The version that must still be there: of If-Match; 0 for If-None-Match: *; null when the request asks for none.
    /// A tag that cannot be a version gives −1, which no site has.</summary>
    public static int? Expected(HttpRequest request)
    {
        var headers = request.GetTypedHeaders();
        if (headers.IfNoneMatch.Any(tag => tag.Equals(EntityTagHeaderValue.Any)))
            return 0;
        return headers.IfMatch.FirstOrDefault() is not { } tag || tag.Equals(EntityTagHeaderValue.Any)
            ? null
            : int.TryParse(tag.Tag.AsSpan().Trim('"'), CultureInfo.InvariantCulture, out var version) ? version : -1;
    }
}
