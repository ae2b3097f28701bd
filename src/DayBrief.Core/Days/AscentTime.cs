using DayBrief.BoundaryLayer;
using DayBrief.Soundings;

namespace DayBrief.Days;

/// <summary>When the ascent was made, and what that means for the day.</summary>
internal static class AscentTime
{
    /// <summary>The time of a message that states day and hour only; null when it states none.</summary>
    public static DateTimeOffset? Guess(SoundingSource source, DateTimeOffset noon) =>
        source.DayAndHour?.LatestUpTo(DateOnly.FromDateTime(noon.UtcDateTime));

    public static void Judge(DateTimeOffset? valid, SunDay sun, List<Caution> cautions)
    {
        var start = sun.Sunrise ?? sun.Noon.AddHours(-12);
        if (valid is not { } at)
        {
            cautions.Add(new("ascent-time-unknown", Phrase.Of($"The ascent does not say when it was made; it is taken as the air at sunrise.")));
        }
        else if (at > (sun.Sunset ?? sun.Noon.AddHours(12)))
        {
            cautions.Add(new("ascent-too-late", Phrase.Of($"The ascent ({at.UtcDateTime:d MMM HH:mm} UTC) is later than the day; nothing can be computed from it.")));
        }
        else if (at < start.AddHours(-12))
        {
            cautions.Add(new("ascent-old", Phrase.Of($"The ascent ({at.UtcDateTime:d MMM HH:mm} UTC) is {(start - at).TotalHours:0} h older than the sunrise: the air may have changed since.")));
        }
        else if (at > start.AddHours(1))
        {
            cautions.Add(new("ascent-after-sunrise", Phrase.Of($"The ascent was made {(at - start).TotalHours:0.#} h after sunrise; what came before is not known.")));
        }
    }
}
