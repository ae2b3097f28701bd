using System.Collections.Immutable;
using DayBrief.Units;

namespace DayBrief.Reports;

/// <summary>One METAR or SPECI (WMO FM 15, FM 16).</summary>
public sealed record AerodromeReport
{
    /// <summary>The text as given, without its end sign.</summary>
    public required string Raw { get; init; }

    /// <summary>A special report between the regular ones.</summary>
    public bool IsSpecial { get; init; }

    /// <summary>Location indicator.</summary>
    public required string Station { get; init; }

    /// <summary>Time of observation, UTC; day 0 where a NIL does not say.</summary>
    public required DayTime Time { get; init; }

    /// <summary>Made without a human observer.</summary>
    public bool IsAutomatic { get; init; }

    /// <summary>Corrects an earlier one.</summary>
    public bool IsCorrected { get; init; }

    /// <summary>The station sent no observation.</summary>
    public bool IsNil { get; init; }

    /// <summary>Wind, visibility, weather, cloud.</summary>
    public AerodromeConditions Conditions { get; init; } = new();

    /// <summary>Air temperature, whole degrees.</summary>
    public Temperature? Temperature { get; init; }

    /// <summary>Dew point, whole degrees.</summary>
    public Temperature? DewPoint { get; init; }

    /// <summary>Altimeter setting for sea level, from hPa or inches of mercury.</summary>
    public Pressure? Qnh { get; init; }

    /// <summary>Runway groups (visual range, state), as written.</summary>
    public ImmutableArray<string> RunwayGroups { get; init; } = [];

    /// <summary>Recent weather groups (RE…), as written.</summary>
    public ImmutableArray<string> RecentWeather { get; init; } = [];

    /// <summary>Forecasts for the next two hours.</summary>
    public ImmutableArray<ForecastGroup> Trends { get; init; } = [];

    /// <summary>What follows RMK, as written.</summary>
    public string? Remarks { get; init; }

    /// <summary>Groups that were not understood, as written.</summary>
    public ImmutableArray<string> NotUnderstood { get; init; } = [];
}
