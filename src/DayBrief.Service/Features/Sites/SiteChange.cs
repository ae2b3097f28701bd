using System.Text.Json;
using DayBrief.Service.Infrastructure;

namespace DayBrief.Service.Features.Sites;

/// <summary>Which fields differ between two states of a site, for the audit log and the import.</summary>
internal static class SiteChange
{
    /// <summary>Names of the fields, as the outside contract has them.</summary>
    public static IReadOnlyList<string> Between(SiteJson before, SiteJson after)
    {
        var (old, now) = (Fields(before), Fields(after));
        return [.. now.Where(field => old[field.Key] != field.Value).Select(field => field.Key)];
    }

    private static Dictionary<string, string> Fields(SiteJson site) =>
        JsonSerializer.SerializeToElement(site, Json.Line).EnumerateObject()
            .ToDictionary(field => field.Name, field => field.Value.GetRawText());
}
