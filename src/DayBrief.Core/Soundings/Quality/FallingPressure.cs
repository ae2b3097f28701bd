using DayBrief.Soundings.Formats;

namespace DayBrief.Soundings.Quality;

/// <summary>Levels go up: pressure never rises from one to the next. An ascent given from the top down is turned round.</summary>
internal static class FallingPressure
{
    public static void Check(ReadAscent ascent)
    {
        var levels = ascent.Levels;
        if (levels.Count > 2 && Rises(levels))
        {
            levels.Reverse();
            ascent.Note("turned-round", "The levels were given from the top down and have been turned round.");
        }

        for (var i = 1; i < levels.Count; i++)
        {
            if (levels[i].PressureHpa > levels[i - 1].PressureHpa)
            {
                throw levels[i].At("pressureHpa").Refuse(
                    "pressure-not-falling",
                    $"{levels[i].PressureHpa:0.##} hPa comes after {levels[i - 1].PressureHpa:0.##} hPa. Give the levels from the ground up.",
                    levels[i].PressureHpa);
            }
        }
    }

    private static bool Rises(List<ReadLevel> levels)
    {
        for (var i = 1; i < levels.Count; i++)
        {
            if (levels[i].PressureHpa < levels[i - 1].PressureHpa)
            {
                return false;
            }
        }

        return levels[^1].PressureHpa > levels[0].PressureHpa;
    }
}
