namespace DayBrief.Logs;

/// <summary>One position of a flight recorder. Never names anybody.</summary>
/// <param name="Seconds">UTC seconds since midnight of the log's first day; never falls from one fix to the next.</param>
/// <param name="LatitudeDegrees">Latitude, north positive.</param>
/// <param name="LongitudeDegrees">Longitude, east positive.</param>
/// <param name="PressureHeightM">Height in the standard atmosphere over 1013.25 hPa, m.</param>
/// <param name="GnssHeightM">Height of the satellite fix, m; no height where <paramref name="Is3D"/> is false.</param>
/// <param name="Is3D">Whether the satellites gave a height.</param>
public readonly record struct Fix(double Seconds, double LatitudeDegrees, double LongitudeDegrees, double PressureHeightM, double GnssHeightM, bool Is3D)
{
    /// <summary>Whether a motor ran, as far as the recorder's noise or motor sensor tells: at or above half its scale.</summary>
    public bool MotorRuns { get; init; }
}
