using DayBrief.Units;

namespace DayBrief.Flight.Thermals;

/// <summary>How many updrafts there are and how far apart.</summary>
/// <remarks>[Allen2006] equations 19 and 20: N = 0.6·X·Y/(depth·radius) over an area X·Y, and 1.2·L/depth met along a line L.</remarks>
public static class Spacing
{
    /// <summary>Updrafts expected in an area, not rounded.</summary>
    /// <exception cref="ArgumentOutOfRangeException">An argument not above 0.</exception>
    public static double UpdraftsIn(double areaM2, Height depth, double radiusM) =>
        Guard.Finite(areaM2, double.Epsilon) * UpdraftsPerSquareMetre(
            Guard.Finite(depth.Metres, double.Epsilon, name: nameof(depth)), Guard.Finite(radiusM, double.Epsilon));

    /// <summary>Mean distance between updrafts met along a straight line, m: depth/1.2.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Depth not above 0.</exception>
    public static double AlongTrackM(Height depth) => Guard.Finite(depth.Metres, double.Epsilon, name: nameof(depth)) / 1.2;

    /// <summary>Mean distance from one updraft to the nearest other, m, if they lie at random: ½/√density.</summary>
    /// <exception cref="ArgumentOutOfRangeException">An argument not above 0.</exception>
    public static double NearestM(Height depth, double radiusM) => 0.5 / Math.Sqrt(UpdraftsIn(1, depth, radiusM));

    internal static double UpdraftsPerSquareMetre(double depthM, double radiusM) => 0.6 / (depthM * radiusM);
}
