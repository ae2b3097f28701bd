using DayBrief.Units;

namespace DayBrief.Days;

/// <summary>A time over which the wind at the ground stays beyond a bound, from one source.</summary>
/// <param name="Wind">The strongest wind of that time, with its source.</param>
/// <param name="Value">Its greatest figure, m/s.</param>
/// <param name="From">From when; null for the whole day.</param>
/// <param name="To">Until when; null where that is open.</param>
internal readonly record struct WindRun(GroundWind Wind, double Value, DateTimeOffset? From, DateTimeOffset? To)
{
    /// <summary>The times at which a figure of the wind passes a bound. All that the instructor assumes are
    /// told; reports, forecasts and the ascent where they are stronger than what is assumed, each at its own time, but not within
    /// the time of a stronger one of the same source.</summary>
    public static IReadOnlyList<WindRun> Of(
        IEnumerable<GroundWind> winds, Func<GroundWind, Speed?> figure, Func<Speed, bool> passes)
    {
        var runs = new List<WindRun>();
        foreach (var wind in winds)
        {
            if (figure(wind) is not { } value || !passes(value))
                continue;
            var run = new WindRun(wind, value.MetresPerSecond, wind.From, wind.To);
            if (runs.Count > 0 && runs[^1].Wind.Source == wind.Source && runs[^1].To is { } end && end >= wind.From
                && (wind.Source == WindSource.Assumed || runs[^1].Value == run.Value))
                runs[^1] = runs[^1].Joined(run);
            else
                runs.Add(run);
        }

        var assumed = runs.Where(run => run.Wind.Source == WindSource.Assumed).ToArray();
        var other = runs.Except(assumed)
            .Where(run => !assumed.Any(known => known.Value >= run.Value && known.Meets(run)))
            .Where(run => !runs.Any(stronger => stronger != run && stronger.Value > run.Value && stronger.Holds(run)));
        return [.. assumed, .. other];
    }

    public Hazard As(HazardKind kind) => new(kind, Value) { From = From, To = To, Source = Wind.Source, About = Wind.Station };

    private bool Holds(WindRun other) =>
        Wind.Source == other.Wind.Source && (From is null || From <= other.From) && (To is null || To >= other.To);

    private bool Meets(WindRun other) => !(From >= other.To) && !(To <= other.From);

    private WindRun Joined(WindRun next) =>
        new(next.Value > Value ? next.Wind : Wind, Math.Max(Value, next.Value), From, To > next.To ? To : next.To);
}
