using DayBrief.Units;

namespace DayBrief.Flight.Thermals;

/// <summary>Air drawn in low down and pushed out near the top, by continuity.</summary>
/// <remarks>
/// In a round updraft the horizontal flow towards the axis replaces what is carried up: v_r = −(r/2)·∂w/∂z inside the radius
/// with Allen's mean updraft ([Allen2006] equation 11), falling as r₂²/r outside it. In below 0.227 of the depth, out above.
/// </remarks>
public static class RadialFlow
{
    /// <summary>Outward speed of the air at a distance from the axis and a height, m/s; negative is inward.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Distance negative, or height outside 0 to the top of the thermal.</exception>
    public static double OutwardMs(Thermal thermal, double distanceM, Height height)
    {
        ArgumentNullException.ThrowIfNull(thermal);
        Guard.Finite(distanceM, 0);
        var heightM = Guard.Finite(height.Metres, 0, thermal.TopM, nameof(height));
        if (thermal.Form == ThermalForm.Picked)
            return Picked(thermal, distanceM, Math.Max(heightM, 0.02 * thermal.Depth.Metres));
        var fraction = heightM / thermal.TopM;
        var radius = AllenUpdraft.Radius(thermal.TopM, fraction, thermal.RadiusGain);
        return OutwardMs(thermal.WStarMs, thermal.TopM, fraction, radius, distanceM);
    }

    /// <summary>The mean over the disc of 1 − (r/R)² is half of the core; its growth over 2 m of height.</summary>
    private static double Picked(Thermal thermal, double distanceM, double heightM)
    {
        double Core(double metres) => thermal.At(Height.FromMetres(metres)).CentreUpdraftMs;
        var gradient = 0.5 * (Core(heightM + 1) - Core(heightM - 1)) / 2;
        var radius = thermal.At(Height.FromMetres(heightM)).RadiusM;
        return -0.5 * gradient * (distanceM <= radius ? distanceM : radius * radius / distanceM);
    }

    internal static double OutwardMs(double wStarMs, double depthM, double fraction, double radiusM, double distanceM) =>
        distanceM <= radiusM
            ? -0.5 * distanceM * Gradient(wStarMs, depthM, fraction)
            : -0.5 * radiusM * radiusM / distanceM * Gradient(wStarMs, depthM, fraction);

    /// <summary>∂w/∂z of equation 11, per second; the cube root's infinite slope at the ground is cut at 2 % of the depth.</summary>
    internal static double Gradient(double wStarMs, double depthM, double fraction)
    {
        var x = Math.Max(0.02, fraction);
        return wStarMs / depthM * ((Math.Pow(x, -2.0 / 3) / 3) - (1.1 * 4 / 3 * Math.Cbrt(x)));
    }
}
