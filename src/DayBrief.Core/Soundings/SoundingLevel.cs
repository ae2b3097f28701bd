using DayBrief.Units;

namespace DayBrief.Soundings;

/// <summary>What one ascent reports at one pressure. Null is what it does not report there.</summary>
public sealed record SoundingLevel
{
    /// <summary>The pressure that names the level.</summary>
    public required Pressure Pressure { get; init; }

    /// <summary>Reported geopotential height above mean sea level.</summary>
    public Altitude? Height { get; init; }

    /// <summary>Air temperature.</summary>
    public Temperature? Temperature { get; init; }

    /// <summary>Dew point over water.</summary>
    public Temperature? DewPoint { get; init; }

    /// <summary>Wind.</summary>
    public Wind? Wind { get; init; }

    /// <summary>Time since the launch.</summary>
    public TimeSpan? SinceLaunch { get; init; }

    /// <summary>Where the balloon was; it drifts tens of kilometres.</summary>
    public Position? Position { get; init; }
}
