namespace DayBrief.Service.Features.Sites;

/// <summary>Names of time zones of the IANA data, as this machine knows them.</summary>
internal static class TimeZoneNames
{
    private static readonly string[] Known =
    [
        .. TimeZoneInfo.GetSystemTimeZones().Select(zone => zone.Id)
            .Where(id => id.Contains('/', StringComparison.Ordinal) && !id.StartsWith("posix/", StringComparison.Ordinal) && !id.StartsWith("right/", StringComparison.Ordinal))
            .Append("UTC").Distinct().Order(StringComparer.Ordinal),
    ];

    /// <summary>To choose from.</summary>
    public static IReadOnlyList<string> All => Known;

    /// <summary>Up to three names that a mistyped one may mean: those with its last part in them, else none.</summary>
    public static IReadOnlyList<string> Like(string typed)
    {
        var word = typed.Split('/')[^1].Trim().Replace(' ', '_');
        return word.Length < 3
            ? []
            : [.. Known.Where(id => id.Contains(word, StringComparison.OrdinalIgnoreCase)
                || id.Split('/')[^1].StartsWith(word[..3], StringComparison.OrdinalIgnoreCase))
                .OrderByDescending(id => id.Contains(word, StringComparison.OrdinalIgnoreCase)).Take(3)];
    }
}
