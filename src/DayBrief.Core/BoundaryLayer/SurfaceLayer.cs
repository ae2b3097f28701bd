using DayBrief.Thermodynamics;

namespace DayBrief.BoundaryLayer;

/// <summary>The lowest tenth of the convective layer: warmer than the stirred air above it, and slowed by the ground.</summary>
/// <param name="FrictionVelocityMs">u*, m/s.</param>
/// <param name="ObukhovLengthM">L, m; negative over heated ground.</param>
/// <param name="ScreenExcessKelvins">How much warmer it is at 2 m than in the stirred layer.</param>
internal readonly record struct SurfaceLayer(double FrictionVelocityMs, double ObukhovLengthM, double ScreenExcessKelvins)
{
    private const double Karman = 0.4;
    private const double ScreenM = 2;
    private const double Gustiness = 1.2;

    /// <summary>Mean wind in the layer when the ascent reports none.</summary>
    public const double UnknownWindMs = 4;

    /// <summary>The surface layer under a convective layer.</summary>
    /// <remarks>Monin–Obukhov similarity with the flux–profile relations of [Dyer1974] (γ 16, κ 0.4) from 2 m to the top of the
    /// surface layer, a tenth of the depth; the wind at that top is the layer's mean with the gusts of the convection
    /// added, (U² + (1.2 w*)²)^½ [Beljaars1995]. Three iterations from neutral.</remarks>
    public static SurfaceLayer Of(double thetaFlux, double virtualFlux, double kelvins, double depthM, double windMs, double roughnessM)
    {
        var top = Math.Max(10, depthM / 10);
        var wStar = ConvectiveVelocity.Ms(virtualFlux, depthM, kelvins);
        var wind = Math.Sqrt((windMs * windMs) + (Gustiness * Gustiness * wStar * wStar));
        var logTop = Math.Log(top / roughnessM);
        var friction = Math.Max(0.01, Karman * wind / logTop);
        var length = double.NegativeInfinity;
        for (var i = 0; i < 3 && virtualFlux > 0; i++)
        {
            length = -friction * friction * friction * kelvins / (Karman * Air.Gravity * virtualFlux);
            friction = Math.Max(0.01, Karman * wind / Math.Max(1, logTop - MomentumCorrection(top / length)));
        }

        var excess = thetaFlux > 0 && virtualFlux > 0
            ? thetaFlux / (Karman * friction) * (Profile(top, length) - Profile(ScreenM, length))
            : 0;
        return new(friction, length, excess);
    }

    /// <summary>Mean wind at a height in the surface layer, m/s, under a layer with this mean wind.</summary>
    /// <remarks>The same profile as the friction velocity's, with the share of the gusts of the convection taken out again.</remarks>
    public double WindAtMs(double heightM, double windMs, double wStar, double roughnessM)
    {
        var gusty = Math.Sqrt((windMs * windMs) + (Gustiness * Gustiness * wStar * wStar));
        var correction = ObukhovLengthM < 0 ? MomentumCorrection(heightM / ObukhovLengthM) : 0;
        var wind = FrictionVelocityMs / Karman * Math.Max(0, Math.Log(heightM / roughnessM) - correction);
        return gusty > 0 ? Math.Min(windMs, wind * windMs / gusty) : 0;
    }

    /// <summary>Standard deviation of the wind along itself near the ground, m/s: u* (12 − 0.5 z_i/L)^⅓.</summary>
    /// <remarks>[Panofsky1977]; it holds from neutral to convective layers.</remarks>
    public double GustDeviationMs(double depthM) =>
        FrictionVelocityMs * Math.Cbrt(12 + (ObukhovLengthM < 0 ? 0.5 * depthM / -ObukhovLengthM : 0));

    /// <summary>∫ φ_h dz/z with φ_h = (1 − 16 z/L)^−½.</summary>
    private static double Profile(double z, double length)
    {
        var root = Math.Sqrt(1 - (16 * z / length));
        return Math.Log((root - 1) / (root + 1));
    }

    /// <summary>ψ_m of φ_m = (1 − 16 z/L)^−¼.</summary>
    private static double MomentumCorrection(double zOverL)
    {
        var x = Math.Sqrt(Math.Sqrt(1 - (16 * zOverL)));
        return (2 * Math.Log((1 + x) / 2)) + Math.Log((1 + (x * x)) / 2) - (2 * Math.Atan(x)) + (Math.PI / 2);
    }
}
