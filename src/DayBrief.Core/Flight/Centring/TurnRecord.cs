using DayBrief.Flight.Centring.Kernel;

namespace DayBrief.Flight.Centring;

/// <summary>One encounter turn by turn, as a flight recorder would have it: a turn is 360° of heading from where circling began.</summary>
internal sealed class TurnRecord
{
    private const double Turn = 2 * Math.PI;

    private TurnRecord(double[] edgesS, double[] gainedM) => (EdgesS, GainedM) = (edgesS, gainedM);

    /// <summary>When the turns began, and when the last one ended, s.</summary>
    public double[] EdgesS { get; }

    /// <summary>Energy height gained by then, m.</summary>
    public double[] GainedM { get; }

    public int Count => EdgesS.Length - 1;

    /// <summary>Whole turns of an encounter; none where it never turned.</summary>
    public static TurnRecord Of(Trace trace, int encounter)
    {
        var (edges, gained) = (new List<double>(), new List<double>());
        for (var second = 1; second <= EncounterSet.Seconds; second++)
        {
            var (at, before) = (EncounterSet.Place(encounter, second), EncounterSet.Place(encounter, second - 1));
            var (from, to) = (trace.Turned[before], trace.Turned[at]);
            while (to > Math.Max(edges.Count * Turn, 1e-3))
            {
                var share = Math.Clamp(((edges.Count * Turn) - from) / (to - from), 0, 1);
                edges.Add(second - 1 + share);
                gained.Add(trace.Gained[before] + (share * (trace.Gained[at] - trace.Gained[before])));
            }
        }

        return new([.. edges.DefaultIfEmpty(0)], [.. gained.DefaultIfEmpty(0)]);
    }

    /// <summary>Mean climb of a turn, counted from 0, m/s.</summary>
    public double ClimbMs(int turn) => (GainedM[turn + 1] - GainedM[turn]) / (EdgesS[turn + 1] - EdgesS[turn]);

    /// <summary>Mean climb from the beginning of a turn over some turns, m/s.</summary>
    public double ClimbMs(int turn, int turns) => (GainedM[turn + turns] - GainedM[turn]) / (EdgesS[turn + turns] - EdgesS[turn]);

    /// <summary>Best mean climb of three turns running among the first so many, m/s.</summary>
    public double Best3Ms(int turns) =>
        Enumerable.Range(0, turns - 2).Max(turn => (ClimbMs(turn) + ClimbMs(turn + 1) + ClimbMs(turn + 2)) / 3);

    /// <summary>Mean climb of the first three minutes of circling, m/s; null where it lasted less.</summary>
    public double? First3MinMs(int turns)
    {
        var end = EdgesS[0] + 180;
        if (turns < 1 || EdgesS[turns] < end)
            return null;
        var last = Array.FindLastIndex(EdgesS, edge => edge <= end);
        var (from, rate) = (GainedM[last], last < Count ? ClimbMs(last) : 0);
        return (from + (rate * (end - EdgesS[last])) - GainedM[0]) / 180;
    }
}
