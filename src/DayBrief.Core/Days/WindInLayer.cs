using DayBrief.Units;

namespace DayBrief.Days;

/// <summary>The wind in and above the day's thermals, from the ascent's own winds.</summary>
public sealed record WindInLayer
{
    /// <summary>Height up to which it is meant: the day's greatest depth.</summary>
    public required Height Top { get; init; }

    /// <summary>Mean wind of the layer.</summary>
    public required Wind Mean { get; init; }

    /// <summary>Length of the vector change from 100 m to the top of the layer (or of the reports), per kilometre, m/s.</summary>
    public required double ShearMsPerKm { get; init; }

    /// <summary>A maximum of wind below 1000 m that stands at least 2 m/s above the wind over it; null when there is none.</summary>
    public LowLevelMaximum? LowLevelMaximum { get; init; }

    /// <summary>Friction velocity at the strongest time, m/s.</summary>
    public double? FrictionVelocityMs { get; init; }

    /// <summary>−z_i/L at the strongest time.</summary>
    public double? InstabilityRatio { get; init; }

    /// <summary>Streets are likely.</summary>
    public bool StreetsLikely { get; init; }

    /// <summary>Distance between streets; null when none are likely.</summary>
    public Height? StreetSpacing { get; init; }

    /// <summary>How far foot and head of a thermal bend from the vertical at most, degrees, by the shear across it while it rises; between them
    /// the column drifts upright.</summary>
    public double? LeanDegrees { get; init; }

    /// <summary>How far a thermal moves with the wind in 10 minutes.</summary>
    public required Height DriftIn10Minutes { get; init; }

    /// <summary>Too much wind or shear for thermals that hold together.</summary>
    public bool TooMuch { get; init; }

    /// <summary>Wind above the layer may make waves over streets or hills; a hint only.</summary>
    public bool WaveHint { get; init; }

    /// <summary>In words: why streets, why too much, why a wave hint.</summary>
    public required IReadOnlyList<Phrase> Reasons { get; init; }
}

/// <summary>A maximum of wind close to the ground.</summary>
/// <param name="Height">Its height above ground.</param>
/// <param name="Speed">Its speed.</param>
public readonly record struct LowLevelMaximum(Height Height, Speed Speed)
{
    /// <summary>When the growing layer reaches it and mixes it down to the field; null when it does not.</summary>
    public DateTimeOffset? ReachesGround { get; init; }
}
