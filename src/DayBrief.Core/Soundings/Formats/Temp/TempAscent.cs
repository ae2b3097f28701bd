using DayBrief.Texts;
using DayBrief.Units;

namespace DayBrief.Soundings.Formats.Temp;

/// <summary>What the parts of one ascent add up to, while they are being read.</summary>
internal sealed class TempAscent(string? station, DayAndHour? time)
{
    public const string FormatName = "FM 35 TEMP";

    public string? Station { get; } = station;

    public DayAndHour? Time { get; } = time;

    public ReadAscent Read { get; } = new()
    {
        Source = new() { Format = FormatName, Station = station, DayAndHour = time },
    };

    public SortedSet<string> Parts { get; } = new(StringComparer.Ordinal);

    /// <summary>Where the first part was cut, if one was.</summary>
    public Origin? Cut { get; private set; }

    public TimeOnly? LaunchTime { get; set; }

    /// <summary>Where a ship or mobile station was, as the first part that says so states it.</summary>
    public void Place(TempHeader header) => Read.Source = Read.Source with
    {
        Position = Read.Source.Position ?? header.Position,
        Elevation = Read.Source.Elevation ?? header.Elevation,
    };

    public bool HasTemperatures => Read.Levels.Any(level => level.TemperatureC is not null);

    public void CutAt(Origin origin, string part)
    {
        Cut ??= origin;
        Read.Warn("truncated", $"{origin.Words}: {part} ends inside the message; what is complete before it is used.");
    }

    public void Unreadable(TempGroup group, Words why) =>
        Read.Warn("group-unreadable", $"{group.Origin.Words}: {why}");

    /// <summary>The ascent, highest pressure first.</summary>
    public ReadAscent Close()
    {
        var temperatures = Read.Levels.Count(level => level.TemperatureC is not null);
        if (Cut is { } cut && (temperatures < SoundingLimits.FewestTemperatures || Read.Levels.Count < SoundingLimits.FewestLevels))
        {
            throw cut.Refuse("truncated", $"the message is cut here; only {temperatures} temperatures are complete, too few for an ascent. Give the whole message.");
        }

        Read.Levels.Sort(static (a, b) => b.PressureHpa!.Value.CompareTo(a.PressureHpa!.Value) is not 0 and var order ? order : Order(a, b));
        Read.WindsByHeight.Sort(static (a, b) => a.Height.CompareTo(b.Height));
        Read.Source = Read.Source with { LaunchTime = LaunchTime };
        Read.TurnsReported = Parts.Overlaps(["TTBB", "UUBB", "IIBB"]);
        if (!Parts.Overlaps(["TTAA", "UUAA", "IIAA"]))
        {
            Read.Warn("part-a-missing", "Part A (surface and standard levels) is missing: heights and most winds do not show.");
        }

        if (!Read.TurnsReported)
        {
            Read.Warn("part-b-missing", "Part B (significant levels) is missing: inversions between the standard levels do not show.");
        }

        return Read;
    }

    /// <summary>Whether a wind report is of the same station and at most an hour away.</summary>
    public bool IsNear(TempAscent winds) =>
        Station is not null && Station == winds.Station
        && (Time, winds.Time) is ({ } time, { } other) && time.Day == other.Day && Math.Abs(time.Hour - other.Hour) <= 1;

    /// <summary>Takes the winds of a report of another hour.</summary>
    public void Lend(TempAscent winds)
    {
        winds.Read.Levels.ForEach(Read.Add);
        winds.Read.WindsByHeight.ForEach(wind => AddWind(wind.Height, wind.Wind));
        Read.Note("winds-merged", $"The winds of the PILOT report of {winds.Time?.Hour:00} UTC were added.");
    }

    public void AddWind(Altitude height, Wind wind)
    {
        if (Read.WindsByHeight.All(known => known.Height != height))
        {
            Read.WindsByHeight.Add(new(height, wind));
        }
    }

    // List.Sort is not stable, and the order among equals decides which one is believed.
    private static int Order(ReadLevel a, ReadLevel b) => a.Rank != b.Rank
        ? a.Rank.CompareTo(b.Rank)
        : (a.Origin.Line ?? 0).CompareTo(b.Origin.Line ?? 0) is not 0 and var line
            ? line
            : string.CompareOrdinal(a.Origin.Group, b.Origin.Group);
}
