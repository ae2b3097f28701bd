using DayBrief.Thermodynamics;
using DayBrief.Units;

namespace DayBrief.BoundaryLayer;

/// <summary>Sunlight and net radiation at the ground.</summary>
public static class Radiation
{
    private const double StefanBoltzmann = 5.67e-8;

    /// <summary>Sunlight on level ground under a clear sky, W/m².</summary>
    /// <remarks>[HoltslagUlden1983] eq. 1 with the turbidity of temperate Europe: 990 sin φ − 30, 0 where that is
    /// negative. Height of the site is not counted.</remarks>
    /// <param name="elevationDegrees">Elevation of the sun.</param>
    public static double ClearSkyWm2(double elevationDegrees) =>
        ClearSky(Math.Sin(Guard.Finite(elevationDegrees, -90, 90) * Math.PI / 180));

    /// <summary>Share of the clear-sky sunlight that comes through cloud: 1 − 0.75 (N/8)^3.4.</summary>
    /// <remarks>[KastenCzeplak1980]. Total cover; knows nothing of the kind of cloud.</remarks>
    /// <param name="oktas">Cover in eighths, 0 to 8.</param>
    public static double Transmitted(double oktas) => Through(Guard.Finite(oktas, 0, 8) / 8);

    /// <summary>Net radiation of the ground, W/m².</summary>
    /// <remarks>[HoltslagUlden1983] eqs. 4–9: [(1 − r) K + 5.31·10⁻¹³ T⁶ − σ T⁴ + 60 n]/1.12.</remarks>
    /// <param name="sunlightWm2">Sunlight on level ground.</param>
    /// <param name="albedo">Share reflected, 0 to 1.</param>
    /// <param name="air">Screen temperature.</param>
    /// <param name="oktas">Cloud cover in eighths.</param>
    public static double NetWm2(double sunlightWm2, double albedo, Temperature air, double oktas) =>
        Net(sunlightWm2, Guard.Finite(albedo, 0, 1), air.Kelvins, Guard.Finite(oktas, 0, 8) / 8);

    internal static double ClearSky(double sinElevation) => Math.Max(0, (990 * sinElevation) - 30);

    internal static double Through(double cover) =>
        cover <= 0 ? 1 : 1 - (0.75 * Math.Exp(3.4 * Math.Log(Math.Min(1, cover))));

    internal static double Net(double sunlightWm2, double albedo, double kelvins, double cover)
    {
        var squared = kelvins * kelvins;
        return (((1 - albedo) * sunlightWm2)
            + (5.31e-13 * squared * squared * squared)
            - (StefanBoltzmann * squared * squared)
            + (60 * cover)) / 1.12;
    }

    /// <summary>γ/s: the psychrometric constant over the slope of the saturation specific humidity,
    /// (c_p/L)/(dq_s/dT), of [Bolton1980] eq. 10.</summary>
    internal static double PsychrometricOverSlope(double kelvins, double hpa)
    {
        var celsius = kelvins - Temperature.ZeroCelsius;
        var slopeHpa = Saturation.OverWaterHpa(celsius) * 17.67 * 243.5 / ((celsius + 243.5) * (celsius + 243.5));
        return Air.SpecificHeat * hpa / (Air.LatentHeat * Air.Epsilon * slopeHpa);
    }
}
