using System.Globalization;

namespace DayBrief.Soundings.Formats;

/// <summary>An instant as people write it: ISO 8601 with its zone.</summary>
internal static class Timestamp
{
    private static readonly string[] Patterns =
    [
        "yyyy-MM-dd'T'HH:mmK", "yyyy-MM-dd'T'HH:mm:ssK", "yyyy-MM-dd'T'HH:mm:ss.FFFFFFFK", "yyyy-MM-dd HH:mmK", "yyyy-MM-dd HH:mm:ssK",
        "yyyy-MM-dd'T'HHK", "yyyyMMdd'T'HHmmK", "yyyy-MM-dd HH:mm:ss.FFFFFFFK", "yyyy/MM/dd HH:mmK", "yyyy/MM/dd HH:mm:ssK", "yyyy/MM/dd'T'HH:mm:ssK",
        "dd.MM.yyyy HH:mmK", "dd.MM.yyyy HH:mm:ssK", "yyyyMMdd HH:mmK", "yyyyMMdd HH:mm:ssK", "yyyyMMdd HHmmK", "yyyyMMdd'T'HHmmssK",
        "yyyy-MM-dd HH:mm:ss zzz", "yyyyMMddHHmmK",
    ];

    /// <summary>Null if it is no time, or one without a zone: an hour without a zone would be a guess.</summary>
    public static DateTimeOffset? Parse(string text)
    {
        var trimmed = text.Trim().Replace(" UTC", "Z", StringComparison.OrdinalIgnoreCase);
        var zoned = trimmed.EndsWith('Z') || (trimmed.Length > 6 && trimmed[^6] is '+' or '-') || (trimmed.Length > 5 && trimmed[^5] is '+');
        return zoned && DateTimeOffset.TryParseExact(
            trimmed, Patterns, CultureInfo.InvariantCulture, DateTimeStyles.AssumeUniversal, out var time)
            ? time
            : null;
    }
}
