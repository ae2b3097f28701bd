namespace DayBrief.Soundings.Formats.Bufr;

/// <summary>Brings together what the messages of an input tell about one launch.</summary>
internal static class BufrMerge
{
    /// <summary>Wind reports rank behind ascents.</summary>
    private const int WindRank = 1;

    /// <summary>A station sends one ascent twice, up to 100 hPa as soon as it can and then whole: the longer is taken. A wind
    /// report (PILOT) of the same station and hour lends its winds. A wind report alone stays one.</summary>
    public static List<ReadAscent> OfOneLaunch(List<ReadAscent> ascents)
    {
        var (temperatures, winds) = (ascents.Where(HasTemperatures).ToList(), ascents.Where(ascent => !HasTemperatures(ascent)).ToList());
        var distinct = temperatures.GroupBy(ascent => (ascent.Source.Station, ascent.Source.ValidAt))
            .Select(same => same.MaxBy(ascent => ascent.Levels.Count)!)
            .ToList();
        if (distinct.Count == 0)
        {
            return winds;
        }

        foreach (var wind in winds)
        {
            if (distinct.Find(ascent => IsSameHour(ascent, wind)) is { } ascent)
            {
                Lend(wind, ascent);
            }
        }

        return distinct;
    }

    private static bool HasTemperatures(ReadAscent ascent) => ascent.Levels.Exists(level => level.TemperatureC is not null);

    private static bool IsSameHour(ReadAscent ascent, ReadAscent wind) =>
        ascent.Source.Station is not null
        && ascent.Source.Station == wind.Source.Station
        && (ascent.Source.ValidAt - wind.Source.ValidAt)?.Duration() <= TimeSpan.FromHours(1);

    private static void Lend(ReadAscent wind, ReadAscent ascent)
    {
        foreach (var level in wind.Levels)
        {
            ascent.Add(level with { Rank = WindRank });
        }

        ascent.WindsByHeight.AddRange(wind.WindsByHeight);
        ascent.Note("winds-merged", "The winds of a wind report (PILOT) of the same station and hour were added.");
        var sorted = ascent.Levels.OrderByDescending(level => level.PressureHpa).ToList();
        ascent.Levels.Clear();
        ascent.Levels.AddRange(sorted);
    }
}
