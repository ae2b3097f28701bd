using DayBrief.Thermodynamics;
using DayBrief.Units;

namespace DayBrief.BoundaryLayer;

/// <summary>The convective velocity scale w*: how fast air moves up and down in a layer heated from below.</summary>
public static class ConvectiveVelocity
{
    /// <summary>w* = [(g/θ_v) (w′θ_v′)_s z_i]^⅓; null when the surface does not heat the air.</summary>
    /// <remarks>[Deardorff1970] eq. 5. Valid for convective layers only.</remarks>
    /// <param name="virtualHeatFluxKms">Kinematic flux of virtual potential temperature at the surface, K m/s.</param>
    /// <param name="depth">Depth of the layer, z_i.</param>
    /// <param name="virtualTemperature">Virtual potential temperature of the layer.</param>
    public static Speed? Of(double virtualHeatFluxKms, Height depth, Temperature virtualTemperature) =>
        virtualHeatFluxKms > 0 && depth.Metres > 0
            ? Speed.FromMetresPerSecond(Ms(virtualHeatFluxKms, depth.Metres, virtualTemperature.Kelvins))
            : null;

    internal static double Ms(double virtualHeatFluxKms, double depthM, double virtualKelvins) =>
        Math.Cbrt(Cubed(virtualHeatFluxKms, depthM, virtualKelvins));

    /// <summary>w*³; 0 where the surface does not heat the air.</summary>
    internal static double Cubed(double virtualHeatFluxKms, double depthM, double virtualKelvins) =>
        virtualHeatFluxKms > 0 && depthM > 0
            ? Air.Gravity / virtualKelvins * virtualHeatFluxKms * depthM
            : 0;
}
