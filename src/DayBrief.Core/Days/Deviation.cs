namespace DayBrief.Days;

/// <summary>One way in which the day goes otherwise than the brief says, or a limit that is passed.</summary>
/// <param name="Kind">What.</param>
/// <param name="At">When it was reported.</param>
/// <param name="Observed">What was reported, in the unit of the kind; null for what has no figure.</param>
/// <param name="Expected">What was computed, assumed or set as a limit, in the same unit; null where there is none.</param>
/// <param name="Minutes">How early or late; null where that is not what deviates or the computed day never has it.</param>
/// <param name="Group">The group of the report that says it, as written.</param>
public sealed record Deviation(
    DeviationKind Kind, DateTimeOffset At, double? Observed = null, double? Expected = null, double? Minutes = null, string? Group = null);

/// <summary>Ways in which a day goes otherwise.</summary>
public enum DeviationKind
{
    /// <summary>The trigger temperature was reached earlier than computed, or at all though it was not expected (°C).</summary>
    TriggerEarly,

    /// <summary>It was reached later (°C).</summary>
    TriggerLate,

    /// <summary>It should have been reached and is not (°C).</summary>
    TriggerNotYet,

    /// <summary>Warmer now than computed (°C).</summary>
    Warmer,

    /// <summary>Colder now than computed (°C).</summary>
    Colder,

    /// <summary>The wind passes the site's limit (kt).</summary>
    WindOverLimit,

    /// <summary>Gusts pass the site's limit (kt).</summary>
    GustOverLimit,

    /// <summary>Thunder was reported.</summary>
    Thunder,

    /// <summary>A newer forecast has thunder and the brief's has not.</summary>
    ThunderForecast,

    /// <summary>The altimeter setting differs (hPa).</summary>
    Qnh,
}
