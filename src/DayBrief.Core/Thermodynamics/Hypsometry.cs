using DayBrief.Units;

namespace DayBrief.Thermodynamics;

/// <summary>Thickness of a layer of air from its pressures and temperature.</summary>
public static class Hypsometry
{
    /// <summary>Thickness of the layer between two pressures.</summary>
    /// <remarks>[AMS] "hypsometric equation": Δz = (R_d T_v/g) ln(p_lower/p_upper), with the layer's mean virtual
    /// temperature. Geopotential metres.</remarks>
    /// <exception cref="ArgumentOutOfRangeException">A pressure is 0.</exception>
    public static Height Thickness(Pressure lower, Pressure upper, Temperature meanVirtualTemperature) =>
        Height.FromMetres(ThicknessM(lower.Hectopascals, upper.Hectopascals, meanVirtualTemperature.Kelvins));

    internal static double ThicknessM(double lowerHpa, double upperHpa, double virtualKelvins) =>
        Air.GasConstant * virtualKelvins / Air.Gravity * Math.Log(lowerHpa / upperHpa);
}
