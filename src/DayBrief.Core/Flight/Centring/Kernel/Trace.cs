using DayBrief.Numerics.Lanes;

namespace DayBrief.Flight.Centring.Kernel;

/// <summary>The first flights of a set second by second: by <see cref="EncounterSet.Place"/>. The axis of the thermal is the origin.</summary>
internal sealed class Trace(int count)
{
    public int Count => count;

    /// <summary>Energy height gained, m.</summary>
    public float[] Gained { get; } = new float[(EncounterSet.Seconds + 1) * count];

    /// <summary>Angle turned, radians.</summary>
    public float[] Turned { get; } = new float[(EncounterSet.Seconds + 1) * count];

    public float[] X { get; } = new float[(EncounterSet.Seconds + 1) * count];

    public float[] Y { get; } = new float[(EncounterSet.Seconds + 1) * count];

    /// <summary>What is true at the beginning of a second.</summary>
    public void Keep<T>(ref EncounterState<T> s, int second, int first)
        where T : struct, ILane<T>
    {
        if (first >= count)
            return;
        var at = EncounterSet.Place(first, second);
        T.Store(s.Gained, Gained.AsSpan(at));
        T.Store(s.Turned, Turned.AsSpan(at));
        T.Store(s.X, X.AsSpan(at));
        T.Store(s.Y, Y.AsSpan(at));
    }
}
