using DayBrief.Soundings.Formats;
using DayBrief.Units;

namespace DayBrief.Soundings.Quality;

/// <summary>Takes from a high-resolution ascent the levels that say nothing new.</summary>
/// <remarks>One pass upwards. From the last level kept, a level may be left out as long as the straight line (in the
/// logarithm of pressure) to the next level stays within half a tolerance of every level between: a cone narrows with
/// each level, and the level before the one that falls outside is kept. So no temperature on the thinned line is further
/// than 0.1 °C from the measured one, and every feature of more than 0.2 °C stays. The same holds for the dew point
/// (0.5 °C) and both wind components (0.5 m/s). Levels where anything begins or ends are kept. Own method; the cone is
/// the usual way to simplify a line in one pass.</remarks>
internal static class Thinning
{
    /// <summary>Only ascents with more levels than this are thinned.</summary>
    public const int Above = 2000;

    private static readonly double[] Tolerances = [0.1, 0.5, 0.5, 0.5];

    public static List<ReadLevel> Thin(List<ReadLevel> levels, RemarkList remarks)
    {
        if (levels.Count <= Above)
        {
            return levels;
        }

        var kept = new List<ReadLevel> { levels[0] };
        var cone = new Cone(levels[0]);
        for (var i = 1; i < levels.Count; i++)
        {
            var changes = cone.Changes(levels[i]);
            if ((changes || !cone.Holds(levels[i])) && kept[^1] != levels[i - 1])
            {
                kept.Add(levels[i - 1]);
                cone = new(levels[i - 1]);
            }

            if (changes)
            {
                kept.Add(levels[i]);
                cone = new(levels[i]);
            }
            else
            {
                cone.Take(levels[i]);
            }
        }

        if (kept[^1] != levels[^1])
        {
            kept.Add(levels[^1]);
        }

        remarks.Add(
            Severity.Info,
            "thinned",
            $"{levels.Count} levels were thinned to {kept.Count}; no temperature moved by more than 0.1 °C, no dew point by more than 0.5 °C.");
        return kept;
    }

    private static double?[] Values(ReadLevel level)
    {
        var wind = level is { WindMs: { } ms, WindFromDeg: { } degrees } ? Wind.From(degrees, Speed.FromMetresPerSecond(ms)) : (Wind?)null;
        return [level.TemperatureC, level.DewPointC, wind?.EastwardMs, wind?.NorthwardMs];
    }

    /// <summary>The slopes that a line from one level may have without leaving the levels passed so far.</summary>
    private sealed class Cone(ReadLevel from)
    {
        private readonly double _x = Math.Log(from.PressureHpa!.Value);
        private readonly double?[] _from = Values(from);
        private readonly double[] _least = [.. Tolerances.Select(_ => double.NegativeInfinity)];
        private readonly double[] _most = [.. Tolerances.Select(_ => double.PositiveInfinity)];

        /// <summary>Whether a line to this level passes every level so far closely enough.</summary>
        public bool Holds(ReadLevel to)
        {
            var (run, values) = (_x - Math.Log(to.PressureHpa!.Value), Values(to));
            for (var i = 0; i < values.Length; i++)
            {
                var slope = (values[i] - _from[i]) / run;
                if (slope < _least[i] || slope > _most[i])
                {
                    return false;
                }
            }

            return true;
        }

        /// <summary>Whether something begins or ends to be reported at this level.</summary>
        public bool Changes(ReadLevel level) => Values(level).Zip(_from).Any(pair => pair.First is null != pair.Second is null);

        /// <summary>Narrows the cone.</summary>
        public void Take(ReadLevel level)
        {
            var (run, values) = (_x - Math.Log(level.PressureHpa!.Value), Values(level));
            for (var i = 0; i < values.Length; i++)
            {
                if (values[i] is { } value)
                {
                    _least[i] = Math.Max(_least[i], (value - Tolerances[i] - _from[i]!.Value) / run);
                    _most[i] = Math.Min(_most[i], (value + Tolerances[i] - _from[i]!.Value) / run);
                }
            }
        }
    }
}
