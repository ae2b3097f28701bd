using System.Text.Json;
using DayBrief.Service.Infrastructure;

namespace DayBrief.Service.Features.Sites;

/// <summary>What an import would do with one site.</summary>
internal enum ImportKind
{
    /// <summary>It is not here yet.</summary>
    New,

    /// <summary>It is here and differs.</summary>
    Changed,

    /// <summary>It is here as it stands in the file.</summary>
    Same,

    /// <summary>It cannot be used.</summary>
    Refused,
}

/// <summary>One site of a file.</summary>
/// <param name="Kind">What would be done.</param>
/// <param name="Seen">The site with the version that it would follow.</param>
/// <param name="Changes">Fields that differ.</param>
/// <param name="Errors">Why it is refused.</param>
internal sealed record ImportRow(ImportKind Kind, KeptSite Seen, IReadOnlyList<string> Changes, IReadOnlyList<ProblemError> Errors);

/// <summary>What a file of sites would change, told before anything is.</summary>
internal sealed record ImportPlan(string Content, IReadOnlyList<ImportRow> Rows)
{
    /// <summary>The whole file or nothing.</summary>
    public bool IsUsable => Rows.All(row => row.Kind != ImportKind.Refused) && Rows.Any(row => row.Kind is ImportKind.New or ImportKind.Changed);

    /// <summary>The same as long as neither the file nor the sites have changed.</summary>
    public string Fingerprint => string.Join(' ', Rows.Select(row => $"{row.Seen.Site.Id}:{row.Kind}:{row.Seen.Version}"));

    /// <summary>The sites that would be kept.</summary>
    public IReadOnlyList<KeptSite> Kept => [.. Rows.Where(row => row.Kind is ImportKind.New or ImportKind.Changed).Select(row => row.Seen)];

    /// <exception cref="InvalidInputException">It is not a file of sites.</exception>
    public static ImportPlan Of(string content, SiteStore sites)
    {
        var read = Read(content);
        var ids = new HashSet<string?>();
        return new(content, [.. read.Select((site, i) => Row(site, i, twice: !ids.Add(site.Id), sites))]);
    }

    private static ImportRow Row(SiteJson site, int i, bool twice, SiteStore sites)
    {
        var errors = new List<ProblemError>();
        if (!SiteId.IsUsable(site.Id))
            errors.Add(new(SiteId.Rule, Field: $"sites[{i}].id"));
        if (twice)
            errors.Add(new($"\"{site.Id}\" stands twice in the file.", Field: $"sites[{i}].id"));
        try
        {
            site.ToSite();
        }
        catch (InvalidInputException refused)
        {
            errors.AddRange(refused.Errors.Select(error => error with { Field = $"sites[{i}].{error.Field?["site.".Length..]}" }));
        }

        var kept = site.Id is null ? null : sites.FindKept(site.Id);
        var changes = kept is null ? [] : SiteChange.Between(kept.Site, site);
        var kind = errors.Count > 0 ? ImportKind.Refused : kept is null ? ImportKind.New : changes.Count > 0 ? ImportKind.Changed : ImportKind.Same;
        return new(kind, new(site, kept?.Version ?? 0), changes, errors);
    }

    /// <summary>A file as exported, a list of sites, or one SITE.json.</summary>
    private static IReadOnlyList<SiteJson> Read(string content)
    {
        try
        {
            using var json = JsonDocument.Parse(content);
            var root = json.RootElement;
            SiteJson?[] sites = root.ValueKind switch
            {
                JsonValueKind.Array => root.Deserialize<SiteJson?[]>(Json.Line)!,
                JsonValueKind.Object when root.TryGetProperty("sites", out _) => [.. root.Deserialize<SiteFile>(Json.Line)!.Sites ?? []],
                JsonValueKind.Object => [root.Deserialize<SiteJson>(Json.Line)],
                _ => [],
            };
            return sites.Length is > 0 and <= 500 && !sites.Contains(null)
                ? [.. sites.Select(site => site!)]
                : throw InvalidInputException.Field("file", "The file holds no sites, or more than 500.");
        }
        catch (JsonException bad)
        {
            throw InvalidInputException.Field("file", $"The file is not JSON as it is exported here: look at line {(bad.LineNumber ?? 0) + 1}, character {(bad.BytePositionInLine ?? 0) + 1}.");
        }
    }
}
