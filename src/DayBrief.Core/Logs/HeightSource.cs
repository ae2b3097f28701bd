namespace DayBrief.Logs;

/// <summary>Where a flight's heights come from.</summary>
public enum HeightSource
{
    /// <summary>The recorder's pressure sensor: smoother.</summary>
    Pressure,

    /// <summary>The satellite fixes, where no pressure height is recorded.</summary>
    Gnss,
}
