namespace DayBrief.Flight.Centring.Kernel;

/// <summary>Everything that changes during encounters, one lane each; metres, seconds, radians, the axis of the thermal as origin.</summary>
/// <remarks>Mutable fields because the kernel works on them in place. Approach is along +y; bank and turn to the left are positive.</remarks>
internal struct EncounterState<T>
    where T : struct, Numerics.Lanes.ILane<T>
{
    // the glider
    public T X, Y, HeadingX, HeadingY, Bank, Speed, Gained, Turned;

    // what the pilot is told: the instrument's reading, and the seat's feel of the air
    public T Reading, Felt, Slow, SlowBest;

    // the thermal at the glider's height, renewed every second
    public T Centre, InverseRadius, CoreRatio, Blend, Sink, Ring, Outflow, DriftX, DriftY, LeanX, LeanY, Strength, Life;
    public T Gust, GustPerSecond, Along, AlongPerSecond, Wander;

    // the encounter's own lot
    public T NeighbourX, NeighbourY, NeighbourStrength, AgeShare, ShearX, ShearY, Dither, Lot, BankAim, SpeedAim, Misjudged;

    // the pilot's mind
    public T Phase, Side, BankWanted, UntilClock, UntilTurned, WindowStart, Best, BestAt, Worst, WorstAt;
    public T EntryBest, LaterBest, Pending, PendingIsShift, LevelFor, FirstTurnJudged;

    // outcome
    public T CentredSince, CentredAt, FirstOffset, LastInside, GainedThree, LostThree;
}
