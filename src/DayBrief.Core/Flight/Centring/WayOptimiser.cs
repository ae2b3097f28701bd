namespace DayBrief.Flight.Centring;

/// <summary>Chooses the numbers of a way for the day: the closed form's, unless the height gained in three minutes speaks clearly against one.</summary>
/// <remarks>
/// Where to begin a roll-out and when to turn in after the surge are geometry (<see cref="RollOut"/>, <see cref="TurnIn"/>) and are not
/// searched: the simulation's optimum is flat round them, and a search would give other numbers with every seed. The rest are
/// tried one after the other over a few values that a pilot can fly, in encounters other than those that judge the ways afterwards,
/// so a lucky choice gains nothing; a value gives way only to one that is better by 0.02 m/s.
/// </remarks>
internal sealed class WayOptimiser(Briefing briefing, EncounterFlight flight, RollOut closedForm, double turnInS)
{
    /// <summary>Longest time after the surge that a pilot counts, s; in wider thermals the turn begins when the lift stops rising.</summary>
    internal const double LongestWait = 8;

    private const double Gain = 0.02;
    private static readonly Kernel.EncounterKernel.Clock Coarse = new(180, 5);

    private delegate WayParameters With(WayParameters parameters, double value);

    /// <summary>The closed form's numbers.</summary>
    public WayParameters Start => new()
    {
        AfterWorstDeg = Math.Clamp(15 * Math.Round(closedForm.AfterWorstReadingDeg / 15), 0, 105),
        LevelS = Math.Clamp(Math.Round(closedForm.LevelS), 0, 6),
        TightenDeg = briefing.Tightenings[0],
        AfterSurgeS = turnInS <= LongestWait ? turnInS : null,
    };

    /// <summary>The numbers for a way, beginning from those already found for another or from the closed form.</summary>
    public WayParameters Choose(CentringWay way, WayParameters? from = null)
    {
        var best = from ?? way switch
        {
            CentringWay.TurnOnSurge => Start with { AfterSurgeS = Math.Min(turnInS, LongestWait) },
            CentringWay.Hold or CentringWay.LevelAfter270 or CentringWay.Reverse => Start with { AfterSurgeS = null },
            _ => Start,
        };
        var choices = Choices(way);
        if (choices.Length == 0)
            return best;

        var value = Value(way, best);
        foreach (var (with, values) in choices)
            (best, value) = Sweep(way, best, value, with, values);

        return best;
    }

    private (WayParameters Best, double Value) Sweep(CentringWay way, WayParameters best, double value, With with, double[] values)
    {
        foreach (var tried in values.Select(each => with(best, each)).ToArray())
        {
            if (tried == best)
                continue;
            var gained = Value(way, tried);
            if (gained > value + (180 * Gain))
                (best, value) = (tried, gained);
        }

        return (best, value);
    }

    private double Value(CentringWay way, WayParameters parameters) =>
        Estimate.Of(flight.Fly(briefing.Fly(way, parameters), Coarse).Three).Mean;

    private (With With, double[] Values)[] Choices(CentringWay way) => way switch
    {
        CentringWay.LevelAfter270 => [((p, v) => p with { LevelS = v }, [0, 1, 2, 3, 4, 6])],
        CentringWay.Reverse => [((p, v) => p with { JudgeDeg = v }, [60, 90, 120, 150])],
        CentringWay.StraightenAndShift => [((p, v) => p with { LevelS = v }, [0, 1, 2, 3, 4, 6])],
        CentringWay.TightenAndEase =>
        [
            ((p, v) => p with { HoldDeg = v }, [270, 360, 450]),
            ((p, v) => p with { AfterBestDeg = v }, [0, 30, 60, 330]),
            ((p, v) => p with { TightenDeg = v }, [.. briefing.Tightenings.Order()]),
        ],
        CentringWay.BySwing =>
        [
            ((p, v) => p with { Share = v }, [0.5, 0.75, 1]),
            ((p, v) => p with { LargeFrom = v }, [0.3, 0.45, 0.6, 0.9]),
        ],
        _ => [],
    };
}
