using DayBrief.Units;

namespace DayBrief.Days;

/// <summary>One direction of a runway.</summary>
/// <param name="Designator">As painted, such as "08".</param>
/// <param name="HeadingDegrees">True direction of take-off, 0 to 360°.</param>
/// <param name="Surface">Such as "grass"; null when not known.</param>
/// <param name="MagneticDegrees">Magnetic direction of take-off, 0 to 360°; null when not known.</param>
public sealed record Runway(string Designator, double HeadingDegrees, string? Surface = null, double? MagneticDegrees = null)
{
    /// <summary>True direction of take-off, 0 to 360°.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside 0 to 360°.</exception>
    public double HeadingDegrees { get; init; } = Guard.Finite(HeadingDegrees, 0, 360);

    /// <summary>Magnetic direction of take-off, 0 to 360°; null when not known.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside 0 to 360°.</exception>
    public double? MagneticDegrees { get; init; } = MagneticDegrees is { } known ? Guard.Finite(known, 0, 360) : null;
}
