using DayBrief.Soundings.Formats;
using DayBrief.Texts;

namespace DayBrief.Soundings.Quality;

/// <summary>Refuses numbers that no atmosphere shows: a wrong unit, a slip of the keys, a damaged group.</summary>
/// <remarks>Ranges hold the world records with room: highest sea-level pressure 1,084 hPa, temperatures −89.2 and
/// 56.7 °C at the ground, dew point 35 °C [WMOExtremes]; about −100 °C in the upper air, winds to 150 m/s, balloons to
/// 45 km (common practice, no source).</remarks>
internal static class PossibleValues
{
    public static void Check(ReadAscent ascent)
    {
        for (var i = 0; i < ascent.Levels.Count; i++)
        {
            var level = ascent.Levels[i];
            Within(level, "pressureHpa", level.PressureHpa, 0.5, 1100, "hPa");
            Within(level, "heightM", level.HeightM, -1000, 60_000, "m");
            Within(level, "temperatureC", level.TemperatureC, -120, 60, "°C");
            Within(level, "dewPointC", level.DewPointC, -150, 60, "°C");
            Within(level, "windDirectionDeg", level.WindFromDeg, 0, 360, "°");
            Within(level, "windSpeedKt", level.WindMs, 0, 200, "m/s");
            ascent.Levels[i] = WholeWind(level, ascent);
        }
    }

    private static void Within(ReadLevel level, string name, double? value, double least, double most, string unit)
    {
        if (value is { } number && !(number >= least && number <= most))
        {
            throw level.At(name).Refuse(
                "value-impossible",
                $"{What(name)} of {number:0.##} {unit} is not possible; {least:0.#} to {most:#,0.#} {unit} are read. Check the value and its unit.",
                level.PressureHpa);
        }
    }

    private static Words What(string name) => name switch
    {
        "pressureHpa" => Words.Of("a pressure"),
        "heightM" => Words.Of("a height"),
        "temperatureC" => Words.Of("a temperature"),
        "dewPointC" => Words.Of("a dew point"),
        "windDirectionDeg" => Words.Of("a wind direction"),
        _ => Words.Of("a wind speed"),
    };

    // A calm needs no direction; half a wind is no wind.
    private static ReadLevel WholeWind(ReadLevel level, ReadAscent ascent)
    {
        if (level.WindMs is null == level.WindFromDeg is null)
        {
            return level;
        }

        if (level.WindMs == 0)
        {
            return level with { WindFromDeg = 0 };
        }

        ascent.Note("wind-incomplete", $"{level.At(level.WindMs is null ? "windSpeedKt" : "windDirectionDeg").Words}: direction or speed is missing; the wind of this level is left out.");
        return level with { WindMs = null, WindFromDeg = null };
    }
}
