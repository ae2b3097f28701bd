using DayBrief.Flight.Centring.Kernel;

namespace DayBrief.Flight.Centring;

/// <summary>How climbs go, in the figures that flight recorders give of them; medians over encounters.</summary>
/// <remarks>A climb is a try that is kept for three turns; ratios are over the best mean of three turns running, in climbs of six
/// turns or more.</remarks>
public sealed record ClimbFigures
{
    /// <summary>Climb of turn 1 to 6 over the best three; null where too few climbs last so long.</summary>
    public IReadOnlyList<double>? TurnOverBest { get; init; }

    /// <summary>Turn that first comes within a tenth of the best three.</summary>
    public double? FirstGoodTurn { get; init; }

    /// <summary>Mean climb of the first three minutes of circling over the best three turns.</summary>
    public double? First3MinOverBest { get; init; }

    /// <summary>Share of all tries left before two turns, per cent.</summary>
    public double LeftBefore2Pct { get; init; }

    /// <summary>Share of all tries left before three turns, per cent.</summary>
    public double LeftPct { get; init; }

    /// <summary>From flights that were traced.</summary>
    /// <param name="trace">The flights.</param>
    /// <param name="usualMs">The day's usual climb, by which a first turn is judged.</param>
    /// <param name="leaving">When pilots give up.</param>
    internal static ClimbFigures Of(Trace trace, double usualMs, Leaving leaving)
    {
        var count = trace.Count;
        var records = Enumerable.Range(0, count).Select(encounter => TurnRecord.Of(trace, encounter)).ToArray();
        var kept = records.Select(record => leaving.TurnsKept(record, usualMs)).ToArray();
        var long_ = Enumerable.Range(0, count).Where(i => kept[i] >= 6)
            .Select(i => (Record: records[i], Turns: kept[i], Best: records[i].Best3Ms(kept[i])))
            .Where(climb => climb.Best > 0).ToArray();
        double Share(int turns) => 100.0 * kept.Count(each => each < turns) / count;
        return new()
        {
            LeftBefore2Pct = Share(2),
            LeftPct = Share(3),
            TurnOverBest = long_.Length < Fewest ? null : [.. Enumerable.Range(0, 6).Select(turn => Median(long_.Select(climb => climb.Record.ClimbMs(turn) / climb.Best))!.Value)],
            FirstGoodTurn = long_.Length < Fewest ? null : Median(long_.Select(climb => FirstGood(climb.Record, climb.Best))),
            First3MinOverBest = Median(long_.Select(climb => climb.Record.First3MinMs(climb.Turns) / climb.Best).OfType<double>()),
        };
    }

    /// <summary>Fewer climbs than this tell nothing.</summary>
    private const int Fewest = 16;

    private static double FirstGood(TurnRecord record, double best) =>
        1 + Enumerable.Range(0, record.Count).First(turn => record.ClimbMs(turn) >= 0.9 * best || turn == record.Count - 1);

    private static double? Median(IEnumerable<double> values)
    {
        var ordered = values.Order().ToArray();
        return ordered.Length == 0 ? null : 0.5 * (ordered[(ordered.Length - 1) / 2] + ordered[ordered.Length / 2]);
    }
}
