namespace DayBrief.Days;

/// <summary>How gliders get into the air.</summary>
public enum LaunchMethod
{
    /// <summary>Winch.</summary>
    Winch,

    /// <summary>Behind an aeroplane.</summary>
    Aerotow,

    /// <summary>Behind a car.</summary>
    CarTow,

    /// <summary>With an engine of its own.</summary>
    SelfLaunch,

    /// <summary>By a rubber rope from a slope.</summary>
    Bungee,
}
