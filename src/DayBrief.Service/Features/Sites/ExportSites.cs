using System.Text.Json;
using System.Text.Json.Serialization;
using DayBrief.Service.Infrastructure;
using Microsoft.AspNetCore.Http.HttpResults;

namespace DayBrief.Service.Features.Sites;

/// <summary>All sites as one file, which <see cref="ImportSites"/> takes back.</summary>
internal static class ExportSites
{
    private static readonly JsonSerializerOptions WithoutNulls =
        new(Json.Indented) { DefaultIgnoreCondition = JsonIgnoreCondition.WhenWritingNull };

    internal static void Map(RouteGroupBuilder pages) => pages.MapGet("/export", Handle);

    private static FileContentHttpResult Handle(SiteStore sites) => TypedResults.File(
        JsonSerializer.SerializeToUtf8Bytes(new SiteFile(sites.All()), WithoutNulls),
        "application/json",
        "daybrief-sites.json");
}

/// <summary>The file of sites.</summary>
/// <param name="Sites">Each as in SITE.json.</param>
internal sealed record SiteFile(IReadOnlyList<SiteJson?>? Sites);
