namespace DayBrief.Flight.Centring;

/// <summary>Chooses the numbers of a way for the day: the height gained in three minutes decides.</summary>
/// <remarks>
/// One number after the other over a few values that a pilot can fly, twice round, from the closed form's values. The encounters
/// are others than those that judge the ways afterwards, so a lucky choice gains nothing. The optima are flat: of two values
/// within 0.01 m/s the one nearer the closed form stays.
/// </remarks>
internal sealed class WayOptimiser(Briefing briefing, EncounterFlight flight, RollOut closedForm)
{
    private const double Gain = 0.01;
    private static readonly Kernel.EncounterKernel.Clock Coarse = new(180, 5);

    private delegate WayParameters With(WayParameters parameters, double value);

    /// <summary>The closed form's numbers.</summary>
    public WayParameters Start => new()
    {
        AfterWorstDeg = Math.Clamp(15 * Math.Round(closedForm.AfterWorstReadingDeg / 15), 0, 105),
        LevelS = Math.Clamp(Math.Round(closedForm.LevelS), 0, 6),
        TightenDeg = briefing.Tightenings[0],
    };

    /// <summary>How ways that correct begin: so many seconds after the surge, or when the lift stops rising, whichever is better by itself.</summary>
    public WayParameters Entry(WayParameters surge) =>
        Value(CentringWay.TurnOnSurge, surge) > Value(CentringWay.Hold, Start) ? Start with { AfterSurgeS = surge.AfterSurgeS } : Start;

    /// <summary>The numbers for a way, beginning from those already found for another or from the closed form.</summary>
    public WayParameters Choose(CentringWay way, WayParameters? from = null)
    {
        var best = from ?? (way == CentringWay.TurnOnSurge ? Start with { AfterSurgeS = 0 } : Start);
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
        CentringWay.TurnOnSurge => [AfterSurge],
        CentringWay.LevelAfter270 => [((p, v) => p with { LevelS = v }, [0, 1, 2, 3, 4, 6])],
        CentringWay.Reverse => [((p, v) => p with { JudgeDeg = v }, [60, 90, 120, 150])],
        CentringWay.StraightenAndShift => [AfterWorst, ((p, v) => p with { LevelS = v }, [0, 1, 2, 3, 4, 6])],
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

    private static (With With, double[] Values) AfterWorst =>
        ((p, v) => p with { AfterWorstDeg = v }, [0, 15, 30, 45, 60, 75, 90, 105]);

    private static (With With, double[] Values) AfterSurge => ((p, v) => p with { AfterSurgeS = v }, [0, 1, 2, 3, 4, 5, 6, 7]);
}
