namespace DayBrief.Flight.Centring.Kernel;

/// <summary>How this glider is flown in this run: the same for every encounter of it. Metres, seconds, radians.</summary>
internal sealed record Flying
{
    // the glider and its circle
    public required float PolarA { get; init; }
    public required float PolarB { get; init; }
    public required float PolarC { get; init; }
    public required float Bank { get; init; }
    public required float Speed { get; init; }
    public required float RollRate { get; init; }

    // the instrument
    public required float Lag { get; init; }
    public required float Uncompensated { get; init; }

    // entry
    public required float SurgeMs { get; init; }
    public required float CoreMs { get; init; }
    public bool TurnOnSurge { get; init; }
    public float EntryDelay { get; init; }
    public float EntryExcess { get; init; }
    public float SpeedMemory { get; init; } = 3;

    // corrections; a threshold of NoSwing is never reached
    public const float NoSwing = 1e6f;
    public float Observe { get; init; } = 2 * MathF.PI;
    public float ShiftFrom { get; init; } = NoSwing;
    public float AfterWorst { get; init; }
    public float LevelS { get; init; }
    public ReadOnlyMemory<Hinge> LevelBySwing { get; init; }
    public float TightenFrom { get; init; } = NoSwing;
    public float AfterBest { get; init; }
    public float Tighten { get; init; }
    public float HoldTight { get; init; }

    // the first turn
    public FirstTurn FirstTurn { get; init; }
    public float JudgeAt { get; init; }

    // the pilot's errors: bank from second to second (radians over the wander of unit size), and one lot an encounter each for bank,
    // speed and the place of corrections in the turn
    public float BankWander { get; init; }
    public float BankScatter { get; init; }
    public float SpeedScatter { get; init; }
    public float PlaceScatter { get; init; }

    /// <summary>Outer bound of "centred": distance of the circle's centre from the axis over the updraft radius.</summary>
    public required float CentredShare { get; init; }

    public bool Corrects => ShiftFrom < NoSwing || TightenFrom < NoSwing;

    /// <summary>Adds <c>Slope</c> per m/s of swing beyond <c>From</c>: together the hinges make a line with bends.</summary>
    internal readonly record struct Hinge(float From, float Slope);
}

/// <summary>What the pilot does if the first turn finds less than the entry did.</summary>
internal enum FirstTurn
{
    Kept,
    LevelledAfter270,
    Reversed,
}
