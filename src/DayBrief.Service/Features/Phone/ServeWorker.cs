using System.Text;
using System.Text.Json;
using DayBrief.Service.Features.Briefs.Revisions;
using DayBrief.Service.Infrastructure;
using DayBrief.Service.Languages;
using Microsoft.AspNetCore.Http.HttpResults;

namespace DayBrief.Service.Features.Phone;

/// <summary>The worker that keeps pages on the phone; at the root, since it may serve only what lies below it.</summary>
/// <remarks>It begins with the list of files that every page needs and their common version: when one of them changes, so does
/// the worker, and phones take it and drop the old files.</remarks>
internal static class ServeWorker
{
    private static readonly string[] Fixed =
    [
        "/fonts/source-sans-3-400.woff2",
        "/fonts/source-sans-3-600.woff2",
        "/icons/daybrief.svg",
        "/icons/daybrief-192.png",
    ];

    private static readonly Lazy<string> Script = new(Written);

    internal static void Map(WebApplication app) => app.MapGet("/phone-worker.js", Show).ExcludeFromDescription();

    private static ContentHttpResult Show(HttpResponse response)
    {
        response.Headers.CacheControl = "no-cache";
        return TypedResults.Content(Script.Value, "text/javascript; charset=utf-8");
    }

    private static string Written()
    {
        using var file = typeof(ServeWorker).Assembly.GetManifestResourceStream("phone-worker.js")!;
        var script = new StreamReader(file, Encoding.UTF8).ReadToEnd();
        string[] files =
        [
            ContentAddress.Of("/daybrief.css"),
            ContentAddress.Of("/phone.js"),
            ContentAddress.Of("/reader.js"),
            ContentAddress.Of("/actuals.js"),
            .. Fixed,
            ShowManifest.Path,
            .. Language.All.Select(language => $"{ShowOffline.Path}?language={language.Code}"),
        ];
        var contents = string.Join(' ', [.. files, .. Fixed.Select(ContentAddress.Of), Revision.ThisProgram]);
        return $"const VERSION = \"{Revision.HashOf(Encoding.UTF8.GetBytes(contents))[..8]}\", FILES = {JsonSerializer.Serialize(files)};\n{script}";
    }
}
