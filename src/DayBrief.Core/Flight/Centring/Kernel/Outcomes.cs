using DayBrief.Numerics.Lanes;

namespace DayBrief.Flight.Centring.Kernel;

/// <summary>What came of each encounter of a run.</summary>
internal sealed class Outcomes(int count, int traced = 0)
{
    /// <summary>The first flights second by second; null unless asked for.</summary>
    public Trace? Trace { get; } = traced > 0 ? new(Math.Min(count, traced)) : null;

    /// <summary>Height gained in 3 minutes, m.</summary>
    public float[] Three { get; } = new float[count];

    /// <summary>Height gained in 5 minutes, m.</summary>
    public float[] Five { get; } = new float[count];

    /// <summary>Not zero if the thermal was lost by 3 minutes.</summary>
    public float[] Lost { get; } = new float[count];

    /// <summary>Turns until the circle was centred and stayed so for a whole turn; −1 for never.</summary>
    public float[] CentredAt { get; } = new float[count];

    /// <summary>Distance of the first circle's centre from the axis after half a turn, in updraft radii; −1 without a turn.</summary>
    public float[] FirstOffset { get; } = new float[count];

    public void Keep<T>(ref EncounterState<T> s, int first)
        where T : struct, ILane<T>
    {
        T.Store(s.GainedThree, Three.AsSpan(first));
        T.Store(s.Gained, Five.AsSpan(first));
        T.Store(s.LostThree & T.Of(1), Lost.AsSpan(first));
        T.Store(s.CentredAt, CentredAt.AsSpan(first));
        T.Store(s.FirstOffset, FirstOffset.AsSpan(first));
    }
}
