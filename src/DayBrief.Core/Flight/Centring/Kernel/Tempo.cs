namespace DayBrief.Flight.Centring.Kernel;

/// <summary>The time step and what follows from it for one way of flying, worked out once a run.</summary>
internal readonly struct Tempo
{
    /// <summary>Greatest acceleration along the path, m/s²: a firm but ordinary change of pitch (assumed).</summary>
    private const float Pitch = 2;

    /// <summary>Time constant of the pilot's feel for the air, s (assumed: quicker than the needle, as [FAA-13A] has it).</summary>
    public const float Feel = 0.7f;

    /// <summary>Time over which a pilot gathers what is felt into "it rises still" or "it has stopped", s (assumed).</summary>
    private const float Gathered = 2;

    private const float Gravity = 9.80665f;

    public readonly float Step, Roll, Speeding, SpeedShare, ReadingShare, FeltShare, SlowShare, RootBank, HalfTurn, HalfStep, TurnShare, Uncompensated;

    public Tempo(Flying flying, int stepsPerSecond)
    {
        Step = 1f / stepsPerSecond;
        Roll = flying.RollRate * Step;
        Speeding = Pitch * Step;
        SpeedShare = Step / flying.SpeedMemory;
        ReadingShare = flying.Lag > 0 ? 1 - MathF.Exp(-Step / flying.Lag) : 1;
        FeltShare = 1 - MathF.Exp(-Step / Feel);
        SlowShare = 1 - MathF.Exp(-Step / Gathered);
        RootBank = MathF.Sqrt(MathF.Cos(flying.Bank));
        HalfStep = 0.5f * Step;
        TurnShare = HalfStep * Gravity;
        HalfTurn = TurnShare * MathF.Tan(flying.Bank) / flying.Speed;
        Uncompensated = flying.Uncompensated / (Gravity * Step);
    }
}
