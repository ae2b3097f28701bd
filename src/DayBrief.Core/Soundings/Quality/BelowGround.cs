using DayBrief.Soundings.Formats;

namespace DayBrief.Soundings.Quality;

/// <summary>Models continue their pressure levels into the ground; what they give there is no air. An observed ascent has
/// nothing there, so only forecast profiles are looked at.</summary>
internal static class BelowGround
{
    /// <summary>The model's own ground may lie a little lower than the site's; common practice.</summary>
    private const double ToleranceM = 20;

    /// <summary>Leaves such levels their height only, like the standard levels below the ground in FM 35.</summary>
    public static void Clear(ReadAscent ascent)
    {
        if (!ascent.IsForecast || ascent.Source.Elevation is not { } ground)
        {
            return;
        }

        var cleared = 0;
        for (var i = 0; i < ascent.Levels.Count; i++)
        {
            var level = ascent.Levels[i];
            if (level.HeightM < ground.Metres - ToleranceM)
            {
                ascent.Levels[i] = level with { TemperatureC = null, DewPointC = null, WindFromDeg = null, WindMs = null };
                cleared++;
            }
        }

        if (cleared > 0)
        {
            ascent.Note("below-ground", $"{cleared} level(s) of the forecast lie below {ground.Metres:0} m, in the ground; they keep their height only.");
        }
    }
}
