namespace DayBrief.Soundings.Formats.Csv;

/// <summary>Tells the record of one balloon, whose times run on as it rises, from profiles of several hours, and keeps its rise.</summary>
internal static class BalloonRecord
{
    private static readonly TimeSpan Longest = TimeSpan.FromHours(6);

    /// <param name="hours">The levels of each time, earliest first.</param>
    /// <param name="span">From the first time to the last.</param>
    public static bool Is(IReadOnlyList<IReadOnlyList<ReadLevel>> hours, TimeSpan span)
    {
        var rows = hours.Sum(hour => hour.Count);
        if (rows < SoundingLimits.FewestTemperatures * hours.Count)
        {
            return true;
        }

        if (hours.Count < 3 || span > Longest)
        {
            return false;
        }

        // A profile of the next hour begins at the ground again; a balloon goes on from where it was.
        var goesOn = Enumerable.Range(1, hours.Count - 1).Count(i => !IsBelow(hours[i][0], hours[i - 1][^1], 200));
        return goesOn >= 0.8 * (hours.Count - 1);
    }

    /// <summary>From the launch to the highest point, without what did not rise; a note tells how much is left out.</summary>
    public static List<(DateTimeOffset Time, ReadLevel Level)> Rising(List<(DateTimeOffset Time, ReadLevel Level)> rows, ReadAscent ascent)
    {
        var placed = rows.FindAll(row => row.Level.PressureHpa is not null || row.Level.HeightM is not null);
        rows = IsTopDown(placed) ? [.. Enumerable.Reverse(placed)] : placed;
        var kept = new List<(DateTimeOffset Time, ReadLevel Level)>();
        foreach (var row in rows)
        {
            if (kept.Count == 0 || Rises(kept[^1].Level, row.Level))
            {
                kept.Add(row);
            }
        }

        if (kept.Count < rows.Count)
        {
            ascent.Note("descent-left-out", $"{rows.Count - kept.Count} of {rows.Count} rows are left out: the balloon did not rise there (on the ground, in a downdraught, after its burst).");
        }

        return kept;
    }

    private static bool IsTopDown(List<(DateTimeOffset Time, ReadLevel Level)> rows) =>
        rows.Count > 1 && Enumerable.Range(1, rows.Count - 1).Count(i => !IsBelow(rows[i].Level, rows[i - 1].Level, 0)) < 0.1 * rows.Count;

    private static bool Rises(ReadLevel from, ReadLevel to) =>
        from.PressureHpa is { } lower && to.PressureHpa is { } upper ? upper < lower
        : from.PressureHpa is null && to.PressureHpa is null && from.HeightM is { } low && to.HeightM is { } high && high > low;

    private static bool IsBelow(ReadLevel level, ReadLevel other, double byM) =>
        level.PressureHpa is { } hpa && other.PressureHpa is { } before ? hpa > before + (byM / 10)
        : level.HeightM is { } metres && other.HeightM is { } height && metres < height - byM;
}
