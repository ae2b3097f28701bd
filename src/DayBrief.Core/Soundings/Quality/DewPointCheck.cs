using DayBrief.Soundings.Formats;

namespace DayBrief.Soundings.Quality;

/// <summary>Air cannot hold a dew point above its temperature: a small excess is taken as saturation, a larger one
/// refused; on most levels it means swapped columns.</summary>
internal static class DewPointCheck
{
    /// <summary>Rounding and sensor error; radiosonde humidity is uncertain by several per cent [WMO8], which near
    /// saturation is 0.5 °C of dew point.</summary>
    private const double SmallExcess = 0.5;

    public static void Check(ReadAscent ascent)
    {
        var both = ascent.Levels.Count(level => level is { TemperatureC: not null, DewPointC: not null });
        var above = ascent.Levels.Where(level => Excess(level) > SmallExcess).ToList();
        if (above.Count > 0)
        {
            throw Refuse(above, both);
        }

        for (var i = 0; i < ascent.Levels.Count; i++)
        {
            var level = ascent.Levels[i];
            if (Excess(level) > 1e-9)
            {
                ascent.Levels[i] = level with { DewPointC = level.TemperatureC };
                ascent.Remarks.Add(
                    Severity.Warning,
                    "dew-point-above-temperature",
                    $"{level.At("dewPointC").Words}: the dew point {level.DewPointC:0.#} °C is above the temperature {level.TemperatureC:0.#} °C; taken as saturated.",
                    level.PressureHpa);
            }
        }
    }

    private static double Excess(ReadLevel level) => (level.DewPointC - level.TemperatureC) ?? double.NegativeInfinity;

    private static InvalidSoundingException Refuse(List<ReadLevel> above, int both)
    {
        var first = above[0];
        return 2 * above.Count > both && above.Count > 1
            ? first.At("dewPointC").Refuse(
                "columns-swapped",
                $"the dew point is above the temperature on {above.Count} of {both} levels: the two columns look swapped.",
                first.PressureHpa)
            : first.At("dewPointC").Refuse(
                "dew-point-above-temperature",
                $"the dew point {first.DewPointC:0.#} °C is above the temperature {first.TemperatureC:0.#} °C at {first.PressureHpa:0.#} hPa. Check both.",
                first.PressureHpa);
    }
}
