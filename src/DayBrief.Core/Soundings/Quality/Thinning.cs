using DayBrief.Soundings.Formats;

namespace DayBrief.Soundings.Quality;

/// <summary>Takes from a high-resolution ascent the levels that say nothing new.</summary>
/// <remarks>One pass upwards. From the last level kept, a level may be left out as long as the straight line (in the
/// logarithm of pressure) to the next level stays within half a tolerance of every level between: a cone narrows with
/// each level, and the level before the one that falls outside is kept. So no temperature on the thinned line is further
/// than 0.1 °C from the measured one, and every feature of more than 0.2 °C stays. The same holds for the dew point
/// (0.5 °C) and both wind components (0.5 m/s). Levels where anything begins or ends are kept, and those beside what the analysis
/// tells. Where the analysis of the thinned ascent still differs by more than rounding, the tolerances are halved, up to four times;
/// then nothing is thinned. Own method; the cone is the usual way to simplify a line in one pass.</remarks>
internal static class Thinning
{
    /// <summary>Only ascents with more levels than this are thinned.</summary>
    public const int Above = 2000;

    private static readonly double[] Shares = [1, 0.5, 0.25, 0.125, 0.0625];

    public static List<ReadLevel> Thin(List<ReadLevel> levels, RemarkList remarks)
    {
        if (levels.Count <= Above)
        {
            return levels;
        }

        var full = new ThinningCheck(levels);
        var landmarks = full.Landmarks();
        foreach (var share in Shares)
        {
            var kept = Kept(levels, share, landmarks);
            if (full.IsKeptBy(kept))
            {
                remarks.Add(
                    Severity.Info,
                    "thinned",
                    $"{levels.Count} levels were thinned to {kept.Count}; no temperature moved by more than 0.1 °C, no dew point by more than 0.5 °C.");
                return kept;
            }
        }

        return levels;
    }

    private static List<ReadLevel> Kept(List<ReadLevel> levels, double share, HashSet<ReadLevel> landmarks)
    {
        var kept = new List<ReadLevel>();
        var cone = Keep(levels[0]);
        for (var i = 1; i < levels.Count; i++)
        {
            var changes = cone.Changes(levels[i]);
            if ((changes || !cone.Holds(levels[i])) && kept[^1] != levels[i - 1])
            {
                cone = Keep(levels[i - 1]);
            }

            if (changes || i == levels.Count - 1 || landmarks.Contains(levels[i]))
            {
                cone = Keep(levels[i]);
            }
            else
            {
                cone.Take(levels[i]);
            }
        }

        return kept;

        ThinningCone Keep(ReadLevel level)
        {
            kept.Add(level);
            return new(level, share);
        }
    }
}
