using System.Globalization;

namespace DayBrief.Soundings.Formats.Csv;

/// <summary>Parts a table with a column of times into ascents: a forecast profile for several hours.</summary>
internal sealed class CsvAscents(CsvHeader header, Func<ReadAscent> begin)
{
    private const int MostRows = 10 * SoundingLimits.Levels;

    private readonly ReadAscent _whole = begin();
    private readonly List<(DateTimeOffset Time, ReadLevel Level)> _timed = [];
    private DateTimeOffset? _time;

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

    /// <summary>One ascent for each time, earliest first; one in all where each level has a time of its own, as in the
    /// record of a balloon.</summary>
    public List<ReadAscent> Close()
    {
        var hours = _timed.GroupBy(row => row.Time).OrderBy(hour => hour.Key).ToList();
        if (hours.Count == 0 || _timed.Count < SoundingLimits.FewestTemperatures * hours.Count)
        {
            _timed.ForEach(row => _whole.Add(row.Level));
            _whole.Source = _whole.Source with { ValidAt = _whole.Source.ValidAt ?? hours.FirstOrDefault()?.Key };
            return [_whole];
        }

        return [.. hours.Select(hour => Ascent(hour.Key, hour.Select(row => row.Level)))];
    }

    private ReadAscent Ascent(DateTimeOffset time, IEnumerable<ReadLevel> levels)
    {
        var ascent = begin();
        ascent.IsForecast = true;
        ascent.Source = ascent.Source with { ValidAt = time };
        foreach (var level in levels)
        {
            ascent.Add(level);
        }

        return ascent;
    }

    /// <summary>Null for a blank cell, and for a bare number: seconds since the launch.</summary>
    private static DateTimeOffset? Time(CsvColumn column, ReadLevel level, string[] cells)
    {
        var text = column.Index < cells.Length ? cells[column.Index].Trim() : "";
        if (text.Length == 0 || double.TryParse(text, NumberStyles.Float, CultureInfo.InvariantCulture, out _))
        {
            return null;
        }

        var isUtc = column.Header.Contains("utc", StringComparison.OrdinalIgnoreCase) || column.Header.Contains("gmt", StringComparison.OrdinalIgnoreCase);
        return Timestamp.Parse(text) ?? (isUtc ? Timestamp.Parse(text + "Z") : null) ?? throw (level.Origin with { Field = column.Header }).Refuse(
            "time-invalid", $"\"{(text.Length > 30 ? text[..30] : text)}\" is not a time with its zone, such as 2026-06-21T06:00Z; or name the column time_utc.");
    }
}
