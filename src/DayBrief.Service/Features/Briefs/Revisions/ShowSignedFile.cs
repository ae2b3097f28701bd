using Microsoft.AspNetCore.Http.HttpResults;

namespace DayBrief.Service.Features.Briefs.Revisions;

/// <summary>What was signed, word for word, as the files that lie beside the database.</summary>
internal static class ShowSignedFile
{
    private static readonly Dictionary<string, string> Types = new()
    {
        ["json"] = "application/json",
        ["pdf"] = "application/pdf",
        ["ascent"] = "application/octet-stream",
        ["sha256"] = "text/plain",
    };

    internal static void Map(RouteGroupBuilder app) =>
        app.MapGet("/briefs/{id}/revisions/{number:int}/signed.{extension}", Handle).ExcludeFromDescription();

    private static Results<FileContentHttpResult, RazorComponentResult<NotFoundPage>> Handle(
        string id, int number, string extension, RevisionStore revisions, PublishedFiles files) =>
        Types.TryGetValue(extension, out var type)
        && revisions.Find(id, number) is { } revision
        && files.Read(revision, $".{extension}") is { } content
            ? TypedResults.File(content, type)
            : NotFoundPage.Result("signed file [not found]");
}
