using DayBrief.Reports;
using DayBrief.Soundings;

namespace DayBrief.Days;

/// <summary>What a brief is made of.</summary>
public sealed record BriefOrder
{
    /// <summary>The ascent.</summary>
    public required Sounding Sounding { get; init; }

    /// <summary>The field.</summary>
    public required Site Site { get; init; }

    /// <summary>The local date.</summary>
    public required DateOnly Date { get; init; }

    /// <summary>What is assumed of the day.</summary>
    public DayAssumptions Assumptions { get; init; } = new();

    /// <summary>An observation at the field or near it.</summary>
    public AerodromeReport? Observation { get; init; }

    /// <summary>A forecast for the field or near it.</summary>
    public AerodromeForecast? Forecast { get; init; }

    /// <summary>Who prepares it.</summary>
    public string? PreparedBy { get; init; }

    /// <summary>When it is prepared; null when nobody says so.</summary>
    public required DateTimeOffset? PreparedAt { get; init; }

    /// <summary>Nobody waits for it any more.</summary>
    public CancellationToken Stopping { get; init; }
}
