using DayBrief.Logs.Tracks;

namespace DayBrief.Logs.Circling;

/// <summary>Cuts circling into full turns of the heading through the air, and measures each.</summary>
internal static class AirTurns
{
    private const double GravityMs2 = 9.80665;

    /// <summary>The climb of a second is taken over two seconds to each side; what that takes from a harmonic is given back.</summary>
    private const int SlopeS = 2;

    /// <summary>Index (fractional seconds) of each crossing of a whole turn, the start included.</summary>
    public static List<double> Cuts(Track track, CirclingPiece piece, CircleFit fit)
    {
        var count = piece.To - piece.From + 1;
        var heading = Headings.Of(track.EastMs.AsSpan(piece.From, count), track.NorthMs.AsSpan(piece.From, count), fit.EastMs, fit.NorthMs);
        List<double> cuts = [piece.From];
        for (var i = 1; i < count; i++)
        {
            var (before, now) = (piece.Sense * (heading[i - 1] - heading[0]), piece.Sense * (heading[i] - heading[0]));
            var next = 360.0 * cuts.Count;
            if (now >= next && before < next)
                cuts.Add(piece.From + i - 1 + ((next - before) / (now - before)));
        }

        return cuts;
    }

    public static IReadOnlyList<FlownTurn> Of(Track track, IReadOnlyList<double> cuts, CircleFit fit)
    {
        var energy = Energy(track, (int)cuts[0], (int)Math.Ceiling(cuts[^1]), fit);
        var turns = new List<FlownTurn>(cuts.Count);
        (double East, double North)? first = null;
        for (var i = 1; i < cuts.Count; i++)
        {
            var centre = Centre(track, cuts[i - 1], cuts[i], fit);
            first ??= centre;
            turns.Add(Turn(track, energy, cuts[0], cuts[i - 1], cuts[i], fit, (centre.East - first.Value.East, centre.North - first.Value.North)));
        }

        return turns;
    }

    private static FlownTurn Turn(Track track, double[] energy, double start, double from, double to, CircleFit fit, (double East, double North) centre)
    {
        var speed = 0.0;
        double cosine = 0, sine = 0;
        var seconds = 0;
        for (var i = (int)Math.Ceiling(from); i < to; i++, seconds++)
        {
            speed += Airspeed(track, i, fit);
            var angle = 2 * Math.PI * (i - from) / (to - from);
            var climb = Slope(energy, i - (int)start);
            cosine += climb * Math.Cos(angle);
            sine += climb * Math.Sin(angle);
        }

        var kept = Math.Sin(2 * Math.PI * SlopeS / (to - from)) / (2 * Math.PI * SlopeS / (to - from));
        return new(
            track.StartS + from,
            to - from,
            (Track.At(energy, to - (int)start) - Track.At(energy, from - (int)start)) / (to - from),
            speed / seconds,
            2 * Math.Sqrt((cosine * cosine) + (sine * sine)) / seconds / kept,
            centre.East,
            centre.North);
    }

    /// <summary>Mean position over a turn, less how far the wind carried the air since the log began.</summary>
    private static (double East, double North) Centre(Track track, double from, double to, CircleFit fit)
    {
        double east = 0, north = 0;
        var seconds = 0;
        for (var i = (int)Math.Ceiling(from); i < to; i++, seconds++)
        {
            east += track.EastM[i] - (fit.EastMs * i);
            north += track.NorthM[i] - (fit.NorthMs * i);
        }

        return (east / seconds, north / seconds);
    }

    /// <summary>Height and speed together, the speed as the mean of five seconds: positions come in steps of some two metres, which a
    /// single second would make into gusts that nobody felt.</summary>
    private static double[] Energy(Track track, int from, int to, CircleFit fit)
    {
        var energy = new double[Math.Min(to, track.Count - 1) - from + 1];
        for (var i = 0; i < energy.Length; i++)
        {
            var (first, last) = (Math.Max(0, from + i - SlopeS), Math.Min(track.Count - 1, from + i + SlopeS));
            var speed = 0.0;
            for (var at = first; at <= last; at++)
                speed += Airspeed(track, at, fit) / (last - first + 1);
            energy[i] = track.HeightM[from + i] + (speed * speed / (2 * GravityMs2));
        }

        return energy;
    }

    private static double Slope(double[] values, int at)
    {
        var (from, to) = (Math.Max(0, at - SlopeS), Math.Min(values.Length - 1, at + SlopeS));
        return (values[to] - values[from]) / (to - from);
    }

    private static double Airspeed(Track track, int at, CircleFit fit)
    {
        var (east, north) = (track.EastMs[at] - fit.EastMs, track.NorthMs[at] - fit.NorthMs);
        return Math.Sqrt((east * east) + (north * north));
    }
}
