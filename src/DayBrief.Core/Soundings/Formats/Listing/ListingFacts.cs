using System.Globalization;
using System.Text.RegularExpressions;

namespace DayBrief.Soundings.Formats.Listing;

/// <summary>Station, time and place from the lines of prose around a table: a title, or a block of facts after it.</summary>
internal sealed partial class ListingFacts
{
    private string? _station;
    private string? _number;
    private DateTimeOffset? _time;
    private double? _latitude;
    private double? _longitude;
    private double? _elevation;

    /// <summary>Whether a line gives a time in words, as the title of another table does.</summary>
    public static bool IsTitle(string line) => line.Length < 300 && (HourFirst().IsMatch(line) || DateFirst().IsMatch(line));

    public void Take(string line)
    {
        if (line.Length is < 4 or > 1000)
        {
            return;
        }

        _time ??= Time(line);
        _number ??= Number().Match(line) is { Success: true } number ? number.Groups[1].Value : null;
        _station ??= Identifier().Match(line) is { Success: true } name ? name.Groups[1].Value : null;
        _latitude ??= Value(Latitude().Match(line));
        _longitude ??= Value(Longitude().Match(line));
        _elevation ??= Elevation().Match(line) is { Success: true } height
            ? Value(height) * (height.Groups[2].Value.StartsWith('f') ? 0.3048 : 1)
            : null;
    }

    public void Describe(ReadAscent ascent)
    {
        var place = _latitude is >= -90 and <= 90 && _longitude is >= -180 and <= 180;
        ascent.Source = ascent.Source with
        {
            Station = ascent.Source.Station ?? _number ?? _station,
            ValidAt = ascent.Source.ValidAt ?? _time,
            Position = ascent.Source.Position ?? (place ? SourceFacts.Position(_latitude, _longitude, default) : null),
            Elevation = ascent.Source.Elevation ?? (_elevation is >= -500 and <= 6000 ? Units.Altitude.FromMetres(_elevation.Value) : null),
        };
    }

    private static double? Value(Match match) =>
        match.Success && double.TryParse(match.Groups[1].ValueSpan, NumberStyles.Float, CultureInfo.InvariantCulture, out var value) ? value : null;

    private static DateTimeOffset? Time(string line)
    {
        if (HourFirst().Match(line) is { Success: true } first)
        {
            return At(first.Groups["y"].Value, Month(first.Groups["m"].Value), first.Groups["d"].Value, first.Groups["h"].Value, first.Groups["n"].Value);
        }

        if (DateFirst().Match(line) is { Success: true } date)
        {
            return At(date.Groups["y"].Value, Month(date.Groups["m"].Value), date.Groups["d"].Value, date.Groups["h"].Value, date.Groups["n"].Value);
        }

        return SixFigures().Match(line) is { Success: true } short_
            ? At("20" + short_.Groups["y"].Value, int.Parse(short_.Groups["m"].ValueSpan, CultureInfo.InvariantCulture), short_.Groups["d"].Value, short_.Groups["h"].Value, short_.Groups["n"].Value)
            : Iso().Match(line) is { Success: true } iso
            ? At(iso.Groups["y"].Value, int.Parse(iso.Groups["m"].ValueSpan, CultureInfo.InvariantCulture), iso.Groups["d"].Value, iso.Groups["h"].Value, iso.Groups["n"].Value)
            : null;
    }

    private static int Month(string name) =>
        1 + Array.IndexOf(["jan", "feb", "mar", "apr", "may", "jun", "jul", "aug", "sep", "oct", "nov", "dec"], name[..3].ToLowerInvariant());

    private static DateTimeOffset? At(string year, int month, string day, string hour, string minute) =>
        month > 0 && DateTimeOffset.TryParseExact(
            $"{year}-{month:00}-{day.PadLeft(2, '0')} {hour.PadLeft(2, '0')}:{(minute.Length == 0 ? "00" : minute)}Z",
            "yyyy-MM-dd HH:mm'Z'", CultureInfo.InvariantCulture, DateTimeStyles.AssumeUniversal, out var time)
            ? time
            : null;

    [GeneratedRegex(@"\b(?<h>[0-9]{1,2})(?::?(?<n>[0-9]{2}))?\s?(?:Z|UTC|GMT)\b[,\s]+(?:on\s+)?(?<d>[0-9]{1,2})\s+(?<m>jan|feb|mar|apr|may|jun|jul|aug|sep|oct|nov|dec)[a-z]*\s+(?<y>[0-9]{4})\b", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant)]
    private static partial Regex HourFirst();

    [GeneratedRegex(@"\b(?<d>[0-9]{1,2})\s+(?<m>jan|feb|mar|apr|may|jun|jul|aug|sep|oct|nov|dec)[a-z]*\s+(?<y>[0-9]{4})[,\s]+(?:at\s+)?(?<h>[0-9]{1,2})(?::?(?<n>[0-9]{2}))?\s?(?:Z|UTC|GMT)\b", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant)]
    private static partial Regex DateFirst();

    [GeneratedRegex(@"\btime:\s*(?<y>[0-9]{2})(?<m>[0-9]{2})(?<d>[0-9]{2})/(?<h>[0-9]{2})(?<n>[0-9]{2})\b", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant)]
    private static partial Regex SixFigures();

    [GeneratedRegex(@"\b(?<y>[0-9]{4})-(?<m>[0-9]{2})-(?<d>[0-9]{2})[T ](?<h>[0-9]{2}):?(?<n>[0-9]{2})(?::[0-9]{2})?\s?(?:Z|UTC|GMT|\+00:?00)(?![A-Za-z])", RegexOptions.CultureInvariant)]
    private static partial Regex Iso();

    [GeneratedRegex(@"(?:^\s*|\bstation\s+(?:number:?\s*)?)([0-9]{5})\b", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant)]
    private static partial Regex Number();

    [GeneratedRegex(@"\bstation(?:\s+(?:identifier|id|name))?\s*[:=]\s*([A-Za-z0-9]{2,10})\b", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant)]
    private static partial Regex Identifier();

    [GeneratedRegex(@"\blat(?:itude)?\s*[:=]\s*(-?[0-9]{1,2}(?:\.[0-9]+)?)\b", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant)]
    private static partial Regex Latitude();

    [GeneratedRegex(@"\blon(?:gitude)?\s*[:=]\s*(-?[0-9]{1,3}(?:\.[0-9]+)?)\b", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant)]
    private static partial Regex Longitude();

    [GeneratedRegex(@"\belev(?:ation)?(?:\s*\(m\))?\s*[:=]\s*(-?[0-9]{1,4}(?:\.[0-9]+)?)\s*(ft|feet|m\b)?", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant)]
    private static partial Regex Elevation();
}
