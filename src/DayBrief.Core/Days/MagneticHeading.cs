using DayBrief.Units;

namespace DayBrief.Days;

/// <summary>Between true and magnetic directions.</summary>
/// <remarks>Variation is the angle from true to magnetic north, east positive: true = magnetic + variation.</remarks>
public static class MagneticHeading
{
    /// <summary>The magnetic direction of a true one, above 0 up to 360°.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not finite.</exception>
    public static double OfTrue(double trueDegrees, double variationDegrees) =>
        Circle(Guard.Finite(trueDegrees) - Guard.Finite(variationDegrees));

    /// <summary>The true direction of a magnetic one, above 0 up to 360°.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not finite.</exception>
    public static double ToTrue(double magneticDegrees, double variationDegrees) =>
        Circle(Guard.Finite(magneticDegrees) + Guard.Finite(variationDegrees));

    /// <summary>North is 360, as runways and winds have it.</summary>
    private static double Circle(double degrees)
    {
        var around = ((degrees % 360) + 360) % 360;
        return around == 0 ? 360 : around;
    }
}
