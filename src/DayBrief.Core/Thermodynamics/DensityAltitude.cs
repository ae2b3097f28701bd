using DayBrief.Units;

namespace DayBrief.Thermodynamics;

/// <summary>The height in the standard atmosphere at which air is as thin as here.</summary>
public static class DensityAltitude
{
    /// <summary>Density altitude of dry air at a pressure and temperature.</summary>
    /// <remarks>[ICAO7488] troposphere, inverted for density: h = (T₀/Γ)(1 − ((p/p₀)/(T/T₀))^{1/4.2559}), T₀ 288.15 K,
    /// p₀ 1013.25 hPa, Γ 6.5 K/km. To 11 km.</remarks>
    /// <exception cref="ArgumentOutOfRangeException">Pressure or temperature is 0.</exception>
    public static Altitude Of(Pressure pressure, Temperature temperature)
    {
        var density = Guard.Finite(pressure.Hectopascals, min: 1) / 1013.25
            / (Guard.Finite(temperature.Kelvins, min: 100) / 288.15);
        return Altitude.FromMetres(288.15 / 0.0065 * (1 - Math.Pow(density, 1 / 4.2559)));
    }
}
