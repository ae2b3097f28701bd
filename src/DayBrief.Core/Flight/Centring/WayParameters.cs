namespace DayBrief.Flight.Centring;

/// <summary>The numbers of a way that are chosen for the day; each way uses its own few.</summary>
internal sealed record WayParameters
{
    /// <summary>Degrees of turn from the worst reading to the beginning of the roll-out.</summary>
    public double AfterWorstDeg { get; init; } = 45;

    /// <summary>Seconds wings level.</summary>
    public double LevelS { get; init; } = 3;

    /// <summary>Degrees of turn from the best reading to tightening.</summary>
    public double AfterBestDeg { get; init; }

    /// <summary>Degrees more bank.</summary>
    public double TightenDeg { get; init; } = 10;

    /// <summary>Degrees of turn for which the tighter bank is held.</summary>
    public double HoldDeg { get; init; } = 270;

    /// <summary>Share of the distance told by the swing that one correction takes out.</summary>
    public double Share { get; init; } = 0.75;

    /// <summary>Swing, as distance in updraft radii, from which <see cref="CentringWay.BySwing"/> straightens.</summary>
    public double LargeFrom { get; init; } = 0.6;

    /// <summary>Seconds from the surge to the first turn; null to turn when the lift, by the seat, has stopped rising.</summary>
    public double? AfterSurgeS { get; init; }

    /// <summary>Degrees of turn after which the first turn is judged, for reversing.</summary>
    public double JudgeDeg { get; init; } = 90;

    /// <summary>Those a way uses, named with their units; without <c>afterSurgeS</c> the first turn waits for the reading to stop rising.</summary>
    public IReadOnlyDictionary<string, double> Of(CentringWay way)
    {
        var used = new Dictionary<string, double>();
        if (AfterSurgeS is { } afterSurge)
            used["afterSurgeS"] = afterSurge;
        if (way is CentringWay.StraightenAndShift or CentringWay.BySwing)
            used["afterWorstReadingDeg"] = AfterWorstDeg;
        if (way is CentringWay.StraightenAndShift or CentringWay.LevelAfter270)
            used["levelS"] = LevelS;
        if (way is CentringWay.TightenAndEase or CentringWay.BySwing)
            (used["afterBestReadingDeg"], used["tightenDeg"], used["holdDeg"]) = (AfterBestDeg, TightenDeg, HoldDeg);
        if (way is CentringWay.BySwing)
            (used["shareOfOffset"], used["largeFromRadii"]) = (Share, LargeFrom);
        if (way is CentringWay.Reverse)
            used["judgedAfterDeg"] = JudgeDeg;
        return used;
    }
}
