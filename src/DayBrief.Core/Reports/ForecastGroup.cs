namespace DayBrief.Reports;

/// <summary>How a forecast group changes what goes before.</summary>
public enum ForecastKind
{
    /// <summary>What holds at the beginning.</summary>
    Initial,

    /// <summary>From a time on (FM).</summary>
    From,

    /// <summary>Changes within a period and stays (BECMG).</summary>
    Becoming,

    /// <summary>At times within a period (TEMPO).</summary>
    Temporary,

    /// <summary>Possible within a period (PROB without TEMPO).</summary>
    Probable,

    /// <summary>No significant change (NOSIG; trends only).</summary>
    NoSignificantChange,
}

/// <summary>One group of a forecast or trend.</summary>
public sealed record ForecastGroup
{
    /// <summary>What kind of change.</summary>
    public required ForecastKind Kind { get; init; }

    /// <summary>30 or 40 per cent, where the group has a probability.</summary>
    public int? ProbabilityPercent { get; init; }

    /// <summary>Begin, UTC; in trends null where not said.</summary>
    public DayTime? From { get; init; }

    /// <summary>End, UTC; null where not said or where the group holds to the end of the forecast.</summary>
    public DayTime? To { get; init; }

    /// <summary>What it states; elements left out do not change.</summary>
    public required AerodromeConditions Conditions { get; init; }

    /// <summary>As written.</summary>
    public required string Raw { get; init; }
}
