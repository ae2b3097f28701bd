using System.Collections.Immutable;
using DayBrief.Logs.Tracks;
using DayBrief.Units;

namespace DayBrief.Logs.Circling;

/// <summary>What a log tells of a flight's circling.</summary>
/// <remarks>
/// Definitions as in `docs/technique.md`, "Against flights": a turn-in is circling of 300° or more; a climb is one of at least three turns whose
/// velocities lie on a circle within 5 m/s and which wins at least 0.2 m/s; with a motor running none is a climb. Nothing is scored
/// where the recorder writes less often than every 5 s. Wind and airspeed by <see cref="CircleFit"/>.
/// </remarks>
public sealed record FlightFigures
{
    private const double LongestIntervalS = 5;
    private const double LeastTurns = 3;
    private const double LargestResidualMs = 5;
    private const double LeastClimbMs = 0.2;
    private const double ReversedWithinS = 25;

    /// <summary>The climbs in their order.</summary>
    public ImmutableArray<FlownClimb> Climbs { get; init; } = [];

    /// <summary>Turn-ins left before three turns.</summary>
    public int TriesLeft { get; init; }

    /// <summary>Turn-ins of the other sense that begin within 25 s of the end of one.</summary>
    public int Reversals { get; init; }

    /// <summary>What could not be scored, and why.</summary>
    public ImmutableArray<LogRemark> Remarks { get; init; } = [];

    /// <summary>The figures of a log.</summary>
    public static FlightFigures Of(FlightLog log)
    {
        ArgumentNullException.ThrowIfNull(log);
        if (log.IntervalS > LongestIntervalS)
            return new() { Remarks = [new("interval", $"Positions lie {log.IntervalS:0} s apart: turns cannot be measured beyond {LongestIntervalS:0} s.")] };
        var climbs = new List<FlownClimb>();
        var (left, reversals, powered) = (0, 0, 0);
        foreach (var track in TrackPieces.Of(log))
        {
            var pieces = CirclingPieces.Of(track);
            left += pieces.Count(piece => piece.Turns < LeastTurns);
            reversals += pieces.Zip(pieces.Skip(1)).Count(pair => pair.First.Sense != pair.Second.Sense && pair.Second.From - pair.First.To <= ReversedWithinS);
            foreach (var piece in pieces.Where(piece => piece.Turns >= LeastTurns))
            {
                if (Powered(track, piece))
                    powered++;
                else if (Climb(track, piece) is { } climb)
                    climbs.Add(climb);
            }
        }

        return new()
        {
            Climbs = [.. climbs],
            TriesLeft = left,
            Reversals = reversals,
            Remarks = powered == 0 ? [] : [new("motor", $"{powered} climb(s) with a motor running were left out.", powered)],
        };
    }

    private static bool Powered(Track track, CirclingPiece piece) =>
        track.Motor is { } motor && motor.AsSpan(piece.From, piece.To - piece.From + 1).Count(true) > (piece.To - piece.From) / 2;

    private static FlownClimb? Climb(Track track, CirclingPiece piece)
    {
        if (Fit(track, piece.From, piece.To) is not { } rough)
            return null;
        var cuts = AirTurns.Cuts(track, piece, rough);
        if (cuts.Count < 3 || Fit(track, piece.From, (int)cuts[^1]) is not { } fit)
            return null;
        cuts = AirTurns.Cuts(track, piece, fit);
        if (cuts.Count < 3 || fit.ResidualMs > LargestResidualMs)
            return null;
        var climb = new FlownClimb
        {
            StartS = track.StartS + piece.From,
            EndS = track.StartS + piece.To,
            ToTheRight = piece.Sense > 0,
            Turns = piece.Turns,
            HeightM = (track.HeightM[piece.From], track.HeightM[piece.To]),
            Wind = Wind.FromComponents(fit.EastMs, fit.NorthMs),
            AirspeedMs = fit.AirspeedMs,
            ResidualMs = fit.ResidualMs,
            TurnList = [.. AirTurns.Of(track, cuts, fit)],
        };
        return climb.MeanMs < LeastClimbMs ? null : climb;
    }

    private static CircleFit? Fit(Track track, int from, int to) =>
        CircleFit.Of(track.EastMs.AsSpan(from, to - from + 1), track.NorthMs.AsSpan(from, to - from + 1));
}
