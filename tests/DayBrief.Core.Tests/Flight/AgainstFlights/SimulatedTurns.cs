using DayBrief.Flight.Centring;
using DayBrief.Flight.Centring.Kernel;

namespace DayBrief.Flight.AgainstFlights;

/// <summary>A simulated climb as a recorder of one fix a second would have it.</summary>
internal sealed class SimulatedTurns(Trace trace, EncounterSet set, TurnRecord record, int encounter, double radiusM)
{
    public ClimbRow Row(int turns)
    {
        var centres = Enumerable.Range(0, turns).Select(Centre).ToArray();
        return new(
            [.. Enumerable.Range(0, turns).Select(turn => record.ClimbMs(turn))],
            [.. Enumerable.Range(0, turns).Select(turn => record.EdgesS[turn + 1] - record.EdgesS[turn])],
            [.. Enumerable.Range(0, turns).Select(Swing)],
            [.. Enumerable.Range(1, turns - 1).Select(turn => Distance(centres[turn - 1], centres[turn]) / radiusM)]);
    }

    private IEnumerable<int> Seconds(int turn)
    {
        var (from, to) = ((int)Math.Ceiling(record.EdgesS[turn]), Math.Min(EncounterSet.Seconds, (int)Math.Floor(record.EdgesS[turn + 1])));
        return Enumerable.Range(from, to - from);
    }

    /// <summary>First harmonic over heading.</summary>
    private double Swing(int turn)
    {
        var (cosine, sine) = (0.0, 0.0);
        foreach (var second in Seconds(turn))
        {
            var (here, next) = (EncounterSet.Place(encounter, second), EncounterSet.Place(encounter, second + 1));
            var climb = trace.Gained[next] - trace.Gained[here];
            var (heading, turned) = (0.5 * (trace.Turned[here] + trace.Turned[next]), trace.Turned[next] - trace.Turned[here]);
            cosine += climb * Math.Cos(heading) * turned;
            sine += climb * Math.Sin(heading) * turned;
        }

        return Math.Sqrt((cosine * cosine) + (sine * sine)) / Math.PI;
    }

    /// <summary>In the air's frame, in which the core wanders.</summary>
    private (double X, double Y) Centre(int turn)
    {
        var places = Seconds(turn).Select(Place).ToArray();
        return (places.Average(place => place.X), places.Average(place => place.Y));
    }

    private (double X, double Y) Place(int second)
    {
        var (x, y) = ((double)trace.X[EncounterSet.Place(encounter, second)], (double)trace.Y[EncounterSet.Place(encounter, second)]);
        for (var before = 0; before < second; before++)
        {
            x += set.AxisX[EncounterSet.Place(encounter, before)];
            y += set.AxisY[EncounterSet.Place(encounter, before)];
        }

        return (x, y);
    }

    private static double Distance((double X, double Y) from, (double X, double Y) to) =>
        Math.Sqrt(Math.Pow(to.X - from.X, 2) + Math.Pow(to.Y - from.Y, 2));
}
