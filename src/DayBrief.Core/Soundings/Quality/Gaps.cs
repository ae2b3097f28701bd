using DayBrief.Soundings.Formats;
using DayBrief.Texts;

namespace DayBrief.Soundings.Quality;

/// <summary>Where levels or dew points are too far apart to show what matters.</summary>
/// <remarks>Thresholds are common practice, no source: a layer of 100 hPa (about 900 m) can hide an inversion that
/// stops every thermal; above 3 km over the ground it matters less.</remarks>
internal static class Gaps
{
    private const double LowestM = 3000;
    private const double LowGapHpa = 100;
    private const double HighGapHpa = 200;
    private const double HighestHpa = 100;

    /// <param name="column">The levels with a temperature.</param>
    /// <param name="turnsReported">Whether the format reports every level where the temperature leaves a straight line by
    /// 1 °C [WMO306] (FM 35 part B and its BUFR equal).</param>
    /// <param name="remarks">Takes the findings.</param>
    public static void Check(IReadOnlyList<ColumnLevel> column, bool turnsReported, RemarkList remarks)
    {
        for (var i = 1; i < column.Count && column[i].PressureHpa >= HighestHpa; i++)
        {
            Pressure(column[i - 1], column[i], turnsReported, remarks);
        }

        DewPoint(column, remarks);
    }

    private static void Pressure(ColumnLevel below, ColumnLevel above, bool turnsReported, RemarkList remarks)
    {
        var gap = below.PressureHpa - above.PressureHpa;
        var low = below.HeightAglM < LowestM;
        if (gap > (low ? LowGapHpa : HighGapHpa))
        {
            var meaning = turnsReported
                ? Words.Of("the report names every turn of more than 1 °C, so there is none")
                : Words.Of("an inversion there would not show");
            remarks.Add(
                low && !turnsReported ? Severity.Warning : Severity.Info,
                "pressure-gap",
                $"No temperature between {below.PressureHpa:0.#} and {above.PressureHpa:0.#} hPa; {meaning}.",
                below.PressureHpa);
        }
    }

    private static void DewPoint(IReadOnlyList<ColumnLevel> column, RemarkList remarks)
    {
        var known = column.Where(level => level.DewPointC is not null).ToList();
        if (known.Count == 0)
        {
            remarks.Add(Severity.Warning, "dew-point-missing", "No level has a dew point: nothing can be said about cloud.");
            return;
        }

        if (known[0] != column[0])
        {
            remarks.Add(Severity.Warning, "dew-point-missing", "The lowest level has no dew point: no condensation level for the surface air.", column[0].PressureHpa);
        }

        for (var i = 1; i < known.Count && known[i - 1].HeightAglM < LowestM; i++)
        {
            var (below, above) = (known[i - 1], known[i]);
            if (below.PressureHpa - above.PressureHpa > LowGapHpa && column.Any(level => level.PressureHpa < below.PressureHpa && level.PressureHpa > above.PressureHpa))
            {
                remarks.Add(Severity.Warning, "dew-point-gap", $"No dew point between {below.PressureHpa:0.#} and {above.PressureHpa:0.#} hPa.", below.PressureHpa);
            }
        }
    }
}
