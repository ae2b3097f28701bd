using DayBrief.Units;

namespace DayBrief.Days;

/// <summary>A time over which the wind at the ground stays beyond a bound, from one source.</summary>
/// <param name="Wind">The strongest wind of that time, with its source.</param>
/// <param name="Value">Its greatest figure, m/s.</param>
/// <param name="From">From when; null for the whole day.</param>
/// <param name="To">Until when; null where that is open.</param>
internal readonly record struct WindRun(GroundWind Wind, double Value, DateTimeOffset? From, DateTimeOffset? To)
{
    /// <summary>The times at which a figure of the wind passes a bound. All that the instructor assumes are told; of reports,
    /// forecasts and the ascent only the strongest, and only when it is stronger than what is assumed.</summary>
    public static IReadOnlyList<WindRun> Of(
        IEnumerable<GroundWind> winds, Func<GroundWind, Speed?> figure, Func<Speed, bool> passes)
    {
        var runs = new List<WindRun>();
        foreach (var wind in winds)
        {
            if (figure(wind) is not { } value || !passes(value))
                continue;
            var run = new WindRun(wind, value.MetresPerSecond, wind.From, wind.To);
            if (runs.Count > 0 && runs[^1].Wind.Source == wind.Source && runs[^1].To is { } end && end == wind.From)
                runs[^1] = runs[^1].Joined(run);
            else
                runs.Add(run);
        }

        var assumed = runs.Where(run => run.Wind.Source == WindSource.Assumed).ToArray();
        var other = runs.Except(assumed).OrderByDescending(run => run.Value).Take(1)
            .Where(run => assumed.All(known => known.Value < run.Value));
        return [.. assumed, .. other];
    }

    public Hazard As(HazardKind kind) => new(kind, Value) { From = From, To = To, Source = Wind.Source, About = Wind.Station };

    private WindRun Joined(WindRun next) =>
        new(next.Value > Value ? next.Wind : Wind, Math.Max(Value, next.Value), From, next.To);
}
