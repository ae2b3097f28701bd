using DayBrief.Soundings.Formats;
using DayBrief.Units;

namespace DayBrief.Soundings.Quality;

/// <summary>The slopes that a line from one level may have without leaving the levels passed so far by more than the
/// tolerances: 0.1 °C of temperature, 0.5 °C of dew point, 0.5 m/s of each wind component, or a share of them.</summary>
internal sealed class ThinningCone(ReadLevel from, double share)
{
    private static readonly double[] Tolerances = [0.1, 0.5, 0.5, 0.5];

    private readonly double _x = Math.Log(from.PressureHpa!.Value);
    private readonly double?[] _from = Values(from);
    private readonly double[] _least = [.. Tolerances.Select(_ => double.NegativeInfinity)];
    private readonly double[] _most = [.. Tolerances.Select(_ => double.PositiveInfinity)];

    /// <summary>Whether something begins or ends to be reported at this level.</summary>
    public bool Changes(ReadLevel level) => Values(level).Zip(_from).Any(pair => pair.First is null != pair.Second is null);

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

    /// <summary>Narrows the cone by one more level.</summary>
    public void Take(ReadLevel level)
    {
        var (run, values) = (_x - Math.Log(level.PressureHpa!.Value), Values(level));
        for (var i = 0; i < values.Length; i++)
        {
            if (values[i] is { } value)
            {
                _least[i] = Math.Max(_least[i], (value - (share * Tolerances[i]) - _from[i]!.Value) / run);
                _most[i] = Math.Min(_most[i], (value + (share * Tolerances[i]) - _from[i]!.Value) / run);
            }
        }
    }

    private static double?[] Values(ReadLevel level)
    {
        var wind = level is { WindMs: { } ms, WindFromDeg: { } degrees } ? Wind.From(degrees, Speed.FromMetresPerSecond(ms)) : (Wind?)null;
        return [level.TemperatureC, level.DewPointC, wind?.EastwardMs, wind?.NorthwardMs];
    }
}
