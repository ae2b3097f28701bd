using DayBrief.Service.Languages;
using Microsoft.AspNetCore.Http.HttpResults;

namespace DayBrief.Service.Features.Phone;

/// <summary>The page that a phone shows without a connection where it has no copy.</summary>
internal static class ShowOffline
{
    public const string Path = "/offline";

    internal static void Map(WebApplication app) => app.MapGet(Path, Show).ExcludeFromDescription();

    private static RazorComponentResult<OfflinePage> Show(HttpRequest request) =>
        new(new Dictionary<string, object?> { [nameof(OfflinePage.In)] = Language.Of(request) });
}
