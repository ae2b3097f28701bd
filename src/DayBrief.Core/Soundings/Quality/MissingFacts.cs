using DayBrief.Soundings.Formats;

namespace DayBrief.Soundings.Quality;

/// <summary>What the input does not say about its ascent.</summary>
internal static class MissingFacts
{
    public static void Check(ReadAscent ascent)
    {
        var source = ascent.Source;
        if (source is { ValidAt: null, DayAndHour: { } time })
        {
            ascent.Note("month-not-stated", $"The report gives the day ({time.Day}) and hour ({time.Hour:00} UTC), no month or year.");
        }
        else if (source.ValidAt is null)
        {
            ascent.Note("time-missing", "The input does not say when the ascent was made.");
        }

        if (source.Station is null && source.Position is null)
        {
            ascent.Note("station-missing", "The input does not say where the ascent was made.");
        }
    }
}
