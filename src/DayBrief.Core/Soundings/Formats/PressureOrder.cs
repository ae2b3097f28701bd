namespace DayBrief.Soundings.Formats;

/// <summary>Puts the levels of machine-made formats in order: they may list standard levels apart, and a balloon that
/// sinks for a moment reports a rising pressure.</summary>
internal static class PressureOrder
{
    public static void Sort(ReadAscent ascent)
    {
        var levels = ascent.Levels;
        for (var i = 1; i < levels.Count; i++)
        {
            if (levels[i].PressureHpa > levels[i - 1].PressureHpa)
            {
                var sorted = levels.OrderByDescending(level => level.PressureHpa).ToList();
                levels.Clear();
                levels.AddRange(sorted);
                ascent.Note("levels-sorted", "The levels were not in order of pressure and have been sorted.");
                return;
            }
        }
    }
}
