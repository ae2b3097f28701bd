using System.Globalization;
using System.Text.RegularExpressions;

namespace DayBrief.Soundings.Formats.Csv;

/// <summary>Parts a table with a column of times into ascents: a forecast profile for several hours, or the record of one
/// balloon.</summary>
internal sealed partial class CsvAscents(CsvHeader header, Func<ReadAscent> begin)
{
    private const int MostRows = 10 * SoundingLimits.Levels;

    private readonly ReadAscent _whole = begin();
    private readonly List<(DateTimeOffset Time, ReadLevel Level)> _timed = [];
    private DateTimeOffset? _time;
    private (string Text, Origin Origin)? _withoutZone;

    public void Add(ReadLevel level, string[] cells)
    {
        // A blank time repeats the one above it.
        _time = header.Time is { } column ? Time(column, level, cells) ?? _time : null;
        if (_time is not { } time)
        {
            _whole.Add(level);
            return;
        }

        _timed.Add((time, level));
        if (_timed.Count > MostRows)
        {
            throw level.Origin.Refuse("too-many-levels", $"More than {MostRows:N0} rows.");
        }
    }

    /// <summary>One ascent for each time, earliest first; one in all where the times are those of a rising balloon.</summary>
    public List<ReadAscent> Close()
    {
        var hours = _timed.GroupBy(row => row.Time).OrderBy(hour => hour.Key).ToList();
        List<ReadAscent> read = hours.Count == 0 || BalloonRecord.Is([.. hours.Select(hour => hour.Select(row => row.Level).ToList())], hours.Count > 0 ? hours[^1].Key - hours[0].Key : default)
            ? [Record(hours.FirstOrDefault()?.Key, hours.Count)]
            : [.. hours.Select(hour => Ascent(hour.Key, hour.Select(row => row.Level)))];
        if (_withoutZone is { } first)
        {
            // An ascent is archived in UTC; a forecast for several hours may be in local time, and the hour would be a guess.
            _ = read.Count > 1 ? throw Unzoned(first.Text, first.Origin) : first;
            read[0].Warn("time-zone-assumed", $"The time {first.Text} is written without a zone; it is taken as UTC, as archives of ascents give it.");
        }

        return read;
    }

    private ReadAscent Record(DateTimeOffset? launch, int times)
    {
        foreach (var (time, level) in times > 0 ? BalloonRecord.Rising(_timed, _whole) : [])
        {
            _whole.Add(level with { SinceLaunch = level.SinceLaunch ?? (time - launch) });
        }

        // The stated hour of an ascent goes before the moment of its launch.
        _whole.Source = _whole.Source with
        {
            ValidAt = _whole.Source.ValidAt ?? launch,
            Position = _whole.Source.Position ?? _whole.Levels.Find(level => level.Position is not null)?.Position,
        };
        return _whole;
    }

    private ReadAscent Ascent(DateTimeOffset time, IEnumerable<ReadLevel> levels)
    {
        var ascent = begin();
        ascent.IsForecast = true;
        ascent.Source = ascent.Source with { ValidAt = time };
        foreach (var level in levels)
        {
            ascent.Add(level with { Position = null });
            ascent.Source = ascent.Source with { Position = ascent.Source.Position ?? level.Position };
        }

        return ascent;
    }

    /// <summary>Null for a blank cell, for a bare number (seconds since the launch) and for a time of day without a date.</summary>
    private DateTimeOffset? Time(CsvColumn column, ReadLevel level, string[] cells)
    {
        var text = column.Index < cells.Length ? cells[column.Index].Trim() : "";
        if (text.Length == 0 || double.TryParse(text, NumberStyles.Float, CultureInfo.InvariantCulture, out _) || CsvNumber.TryRead(text, false, out _))
        {
            return null;
        }

        if (TimeOfDay().IsMatch(text))
        {
            var date = header.Date is { } dates && dates.Index < cells.Length ? cells[dates.Index].Trim() : "";
            if (date.Length == 0)
            {
                return null;
            }

            text = $"{date} {text}";
        }

        if (Timestamp.Parse(text) is { } zoned)
        {
            return zoned;
        }

        var origin = level.Origin with { Field = column.Header };
        var utc = Timestamp.Parse(text + "Z") ?? throw Unzoned(text, origin);
        var isUtc = column.Header.Contains("utc", StringComparison.OrdinalIgnoreCase) || column.Header.Contains("gmt", StringComparison.OrdinalIgnoreCase);
        _withoutZone ??= isUtc ? null : (text, origin);
        return utc;
    }

    private static InvalidSoundingException Unzoned(string text, Origin origin) => origin.Refuse(
        "time-invalid", $"\"{(text.Length > 30 ? text[..30] : text)}\" is not a time with its zone, such as 2026-06-21T06:00Z; or name the column time_utc.");

    [GeneratedRegex(@"^[0-9]{1,2}:[0-9]{2}(?::[0-9]{2}(?:\.[0-9]+)?)?Z?$", RegexOptions.IgnoreCase)]
    private static partial Regex TimeOfDay();
}
