using DayBrief.Soundings.Formats;
using DayBrief.Texts;
using DayBrief.Units;

namespace DayBrief.Soundings.Quality;

/// <summary>Makes one level of all that have the same pressure. Of two values the better-ranked is kept; a remark says
/// where they disagree.</summary>
internal static class LevelMerge
{
    /// <summary>Levels from the ground up, each pressure once. The input is in that order, with equal pressures beside
    /// each other.</summary>
    public static List<ReadLevel> Merge(ReadAscent ascent)
    {
        var merged = new List<ReadLevel>(ascent.Levels.Count);
        foreach (var level in ascent.Levels)
        {
            if (merged.Count > 0 && merged[^1].PressureHpa == level.PressureHpa)
            {
                merged[^1] = level.Rank < merged[^1].Rank
                    ? Both(level, merged[^1], ascent.Remarks)
                    : Both(merged[^1], level, ascent.Remarks);
            }
            else
            {
                merged.Add(level);
            }
        }

        return merged;
    }

    private static ReadLevel Both(ReadLevel kept, ReadLevel other, RemarkList remarks)
    {
        Compare(kept, other, Words.Of("temperature"), kept.TemperatureC, other.TemperatureC, 0.05, "°C", remarks);
        Compare(kept, other, Words.Of("dew point"), kept.DewPointC, other.DewPointC, 0.05, "°C", remarks);
        Compare(kept, other, Words.Of("height"), kept.HeightM, other.HeightM, 0.5, "m", remarks);
        CompareWind(kept, other, remarks);
        return kept with
        {
            HeightM = kept.HeightM ?? other.HeightM,
            TemperatureC = kept.TemperatureC ?? other.TemperatureC,
            DewPointC = kept.TemperatureC is null ? kept.DewPointC ?? other.DewPointC : kept.DewPointC ?? SameAir(kept, other),
            WindFromDeg = kept.WindMs is null ? other.WindFromDeg : kept.WindFromDeg,
            WindMs = kept.WindMs ?? other.WindMs,
            SinceLaunch = kept.SinceLaunch ?? other.SinceLaunch,
            Position = kept.Position ?? other.Position,
        };
    }

    // A dew point belongs to the temperature beside it; from another temperature it would be a third measurement.
    private static double? SameAir(ReadLevel kept, ReadLevel other) =>
        other.TemperatureC is null || Math.Abs(other.TemperatureC.Value - kept.TemperatureC!.Value) < 0.05 ? other.DewPointC : null;

    private static void Compare(
        ReadLevel kept, ReadLevel other, Words what, double? keptValue, double? otherValue, double same, string unit, RemarkList remarks)
    {
        if (keptValue is { } a && otherValue is { } b && Math.Abs(a - b) > same)
        {
            remarks.Add(
                Math.Abs(a - b) > 10 * same ? Severity.Warning : Severity.Info,
                Code(kept, other),
                $"At {kept.PressureHpa:0.#} hPa the {what} is given as {a:0.#} and {b:0.#} {unit}; {Rule(kept, other)}.",
                kept.PressureHpa);
        }
    }

    private static void CompareWind(ReadLevel kept, ReadLevel other, RemarkList remarks)
    {
        if (kept.WindMs is { } a && other.WindMs is { } b
            && (Math.Abs(a - b) > 0.05 || (Math.Abs((kept.WindFromDeg - other.WindFromDeg) ?? 0) % 360 > 0.5 && a > 0)))
        {
            remarks.Add(
                Severity.Warning,
                Code(kept, other),
                $"At {kept.PressureHpa:0.#} hPa the wind is given as {Wind(kept)} and {Wind(other)}; {Rule(kept, other)}.",
                kept.PressureHpa);
        }
    }

    private static string Code(ReadLevel kept, ReadLevel other) => kept.Rank == other.Rank ? "duplicate-level" : "parts-disagree";

    private static Words Rule(ReadLevel kept, ReadLevel other) =>
        kept.Rank == other.Rank ? Words.Of("the first is kept") : Words.Of("the first, of the more reliable group, is kept");

    private static Words Wind(ReadLevel level) => Words.Of($"{level.WindFromDeg:0}° {level.WindMs / Speed.MetresPerSecondPerKnot:0.#} kt");
}
