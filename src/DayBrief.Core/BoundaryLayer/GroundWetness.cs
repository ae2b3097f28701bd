namespace DayBrief.BoundaryLayer;

/// <summary>How wet the ground is today.</summary>
public enum GroundWetness
{
    /// <summary>As usual for the season.</summary>
    Normal,

    /// <summary>No rain for a week or more; grass turning yellow.</summary>
    Dry,

    /// <summary>Rain yesterday, or heavy dew that stays.</summary>
    Wet,

    /// <summary>Standing water after long rain.</summary>
    Soaked,
}
