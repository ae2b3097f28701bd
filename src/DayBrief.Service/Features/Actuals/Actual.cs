namespace DayBrief.Service.Features.Actuals;

/// <summary>One thing that the launch point wrote down; SI (winds in knots), heights above the field. What nobody saw is null.</summary>
internal sealed record Actual
{
    /// <summary>Higher tops and bases, m, are mistyped.</summary>
    public const double HighestM = 15000;

    /// <summary>Stronger climbs, m/s, are mistyped.</summary>
    public const double StrongestMs = 20;

    public string Id { get; init; } = "";

    public ActualKind Kind { get; init; } = ActualKind.Seen;

    public required DateTimeOffset At { get; init; }

    /// <summary>How high somebody got.</summary>
    public double? TopM { get; init; }

    public double? ClimbMs { get; init; }

    public double? CloudBaseM { get; init; }

    public int? CloudOktas { get; init; }

    public double? WindFromDeg { get; init; }

    public double? WindKt { get; init; }

    public double? GustKt { get; init; }

    /// <summary>Who wrote it down, as they sign; never part of an export or a score.</summary>
    public string? By { get; init; }

    public string? Note { get; init; }

    public bool HasPhoto { get; init; }
}

/// <summary>What an entry is about.</summary>
internal enum ActualKind
{
    /// <summary>Whatever its figures say.</summary>
    Seen,

    /// <summary>The first glider stays up.</summary>
    FirstThermal,

    /// <summary>The last one came down for want of lift.</summary>
    LastThermal,
}
