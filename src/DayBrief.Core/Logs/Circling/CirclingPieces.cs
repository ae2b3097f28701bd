using DayBrief.Logs.Tracks;

namespace DayBrief.Logs.Circling;

/// <summary>Where a track circles: the heading turns by more than 6°/s over 20 s, and by at least 300° in all.</summary>
/// <remarks>Definitions of the field figures that the technique is held against (`docs/technique.md`): pieces of the same sense less than 20 s
/// apart are one. Ours, no source.</remarks>
internal static class CirclingPieces
{
    private const int HalfWindowS = 10;
    private const double LeastRate = 6;
    private const double LeastTurnedDeg = 300;
    private const int JoinS = 20;

    public static List<CirclingPiece> Of(Track track)
    {
        var heading = Headings.Of(track.EastMs, track.NorthMs);
        var joined = new List<CirclingPiece>();
        foreach (var run in Runs(heading))
        {
            if (joined.Count > 0 && joined[^1].Sense == run.Sense && run.From - joined[^1].To < JoinS)
                joined[^1] = Piece(heading, joined[^1].From, run.To, run.Sense);
            else
                joined.Add(run);
        }

        return joined.FindAll(piece => piece.TurnedDeg >= LeastTurnedDeg);
    }

    private static IEnumerable<CirclingPiece> Runs(double[] heading)
    {
        var (from, sense) = (0, 0);
        for (var i = 0; i <= heading.Length; i++)
        {
            var now = i < heading.Length ? SenseAt(heading, i) : 0;
            if (now == sense)
                continue;
            if (sense != 0)
                yield return Piece(heading, from, i - 1, sense);
            (from, sense) = (i, now);
        }
    }

    private static int SenseAt(double[] heading, int at)
    {
        var (from, to) = (Math.Max(0, at - HalfWindowS), Math.Min(heading.Length - 1, at + HalfWindowS));
        var rate = to - from < HalfWindowS ? 0 : (heading[to] - heading[from]) / (to - from);
        return rate > LeastRate ? 1 : rate < -LeastRate ? -1 : 0;
    }

    private static CirclingPiece Piece(double[] heading, int from, int to, int sense) =>
        new(from, to, sense, sense * (heading[to] - heading[from]));
}
