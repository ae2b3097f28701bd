namespace DayBrief.Service.Features.Automation;

/// <summary>How far a run has come.</summary>
internal enum RunState
{
    /// <summary>Begun and not ended.</summary>
    Running,

    /// <summary>Ended as it should.</summary>
    Done,

    /// <summary>Failed, to be tried again.</summary>
    Waiting,

    /// <summary>Failed for good.</summary>
    Failed,
}

/// <summary>What the ledger knows of a slot.</summary>
internal sealed record Run
{
    public required Slot Slot { get; init; }

    public required RunState State { get; init; }

    /// <summary>How often it was begun.</summary>
    public required int Attempts { get; init; }

    public required DateTimeOffset StartedAt { get; init; }

    public DateTimeOffset? EndedAt { get; init; }

    /// <summary>When it is tried again.</summary>
    public DateTimeOffset? NextAt { get; init; }

    /// <summary>How the last attempt ended.</summary>
    public RunResult? Result { get; init; }

    /// <summary>Which start of the program runs it.</summary>
    public required string Process { get; init; }
}
