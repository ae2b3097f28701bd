using DayBrief.Service.Languages;
using Microsoft.AspNetCore.Http.HttpResults;

namespace DayBrief.Service.Features.Phone;

/// <summary>What a phone needs to know to put the brief among its programs.</summary>
internal static class ShowManifest
{
    public const string Path = "/manifest.webmanifest";

    /// <summary>The paper of the light scheme.</summary>
    public const string Paper = "#ffffff";

    private sealed record Icon(string Src, string Sizes, string Type, string Purpose);

    private sealed record Manifest(
        string Id, string Name, string Description, string Lang, string StartUrl, string Scope, string Display,
        string ThemeColor, string BackgroundColor, IReadOnlyList<Icon> Icons);

    internal static void Map(WebApplication app) => app.MapGet(Path, Show).ExcludeFromDescription();

    private static JsonHttpResult<Manifest> Show(HttpRequest request)
    {
        var language = Language.Of(request);
        return TypedResults.Json(
            new Manifest(
                "/", "DayBrief", language["The duty instructor's brief of the day's thermals."], language.Code, "/", "/", "standalone", Paper, Paper,
                [
                    new("/icons/daybrief.svg", "any", "image/svg+xml", "any"),
                    new("/icons/daybrief-192.png", "192x192", "image/png", "any"),
                    new("/icons/daybrief-512.png", "512x512", "image/png", "any"),
                    new("/icons/daybrief-maskable-512.png", "512x512", "image/png", "maskable"),
                ]),
            Snake,
            "application/manifest+json");
    }

    private static readonly System.Text.Json.JsonSerializerOptions Snake =
        new(System.Text.Json.JsonSerializerDefaults.Web) { PropertyNamingPolicy = System.Text.Json.JsonNamingPolicy.SnakeCaseLower };
}
