using System.Collections.Immutable;
using DayBrief.Reports;
using DayBrief.Units;

namespace DayBrief.Days;

/// <summary>What a day is watched by: its computed course and what has been reported since.</summary>
public sealed record DayWatch
{
    /// <summary>The computed course.</summary>
    public required DayCourse Course { get; init; }

    /// <summary>Observations of the day, in any order.</summary>
    public ImmutableArray<TimedReport> Reports { get; init; } = [];

    /// <summary>How much higher the reporting station lies than the field; its temperatures are brought to the field.</summary>
    public double StationAboveFieldM { get; init; }

    /// <summary>The site's limit of wind; null when it sets none.</summary>
    public Speed? WindLimit { get; init; }

    /// <summary>The site's limit of gusts; null when it sets none.</summary>
    public Speed? GustLimit { get; init; }

    /// <summary>The altimeter setting that the brief states; null when none.</summary>
    public Pressure? Qnh { get; init; }

    /// <summary>The forecast that the brief was made with.</summary>
    public AerodromeForecast? BriefForecast { get; init; }

    /// <summary>The newest forecast and when it came.</summary>
    public (AerodromeForecast Forecast, DateTimeOffset At)? LatestForecast { get; init; }
}

/// <summary>An observation and its full time.</summary>
/// <param name="At">When it was made.</param>
/// <param name="Report">What it says.</param>
public sealed record TimedReport(DateTimeOffset At, AerodromeReport Report);
