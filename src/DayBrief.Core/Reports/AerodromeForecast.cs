using System.Collections.Immutable;
using DayBrief.Units;

namespace DayBrief.Reports;

/// <summary>An extreme temperature in a TAF.</summary>
/// <param name="Temperature">The extreme.</param>
/// <param name="Time">When, UTC.</param>
public readonly record struct ForecastTemperature(Temperature Temperature, DayTime Time);

/// <summary>One TAF (WMO FM 51).</summary>
public sealed record AerodromeForecast
{
    /// <summary>The text as given, without its end sign.</summary>
    public required string Raw { get; init; }

    /// <summary>Location indicator.</summary>
    public required string Station { get; init; }

    /// <summary>When it was issued, UTC; day 0 where it does not say (some Norwegian and naval forecasts).</summary>
    public required DayTime Issued { get; init; }

    /// <summary>When it was issued, or where it does not say, the begin of its validity.</summary>
    public DayTime Dated => Issued.Day > 0 ? Issued : From ?? Issued;

    /// <summary>Replaces an earlier one (AMD).</summary>
    public bool IsAmended { get; init; }

    /// <summary>Corrects an earlier one (COR).</summary>
    public bool IsCorrected { get; init; }

    /// <summary>Withdrawn (CNL).</summary>
    public bool IsCancelled { get; init; }

    /// <summary>No forecast was made (NIL).</summary>
    public bool IsNil { get; init; }

    /// <summary>The initial state first, then the changes in the order given; empty if cancelled or nil.</summary>
    public ImmutableArray<ForecastGroup> Groups { get; init; } = [];

    /// <summary>Begin of validity, UTC.</summary>
    public DayTime? From { get; init; }

    /// <summary>End of validity, UTC.</summary>
    public DayTime? To { get; init; }

    /// <summary>Maximum temperatures (TX).</summary>
    public ImmutableArray<ForecastTemperature> Maxima { get; init; } = [];

    /// <summary>Minimum temperatures (TN).</summary>
    public ImmutableArray<ForecastTemperature> Minima { get; init; } = [];

    /// <summary>What follows RMK, as written.</summary>
    public string? Remarks { get; init; }

    /// <summary>Groups that were not understood, as written.</summary>
    public ImmutableArray<string> NotUnderstood { get; init; } = [];
}
