using DayBrief.Units;

namespace DayBrief.Thermodynamics;

/// <summary>Vapour pressure of saturated air.</summary>
public static class Saturation
{
    /// <summary>Saturation vapour pressure over a plane surface of liquid water.</summary>
    /// <remarks>[Bolton1980] eq. 10, e = 6.112 exp(17.67 t/(t + 243.5)) hPa. Within 0.3 % from −35 to 35 °C.
    /// Below −35 °C it is still the convention for dew points over water.</remarks>
    public static Pressure OverWater(Temperature temperature) =>
        Pressure.FromHectopascals(OverWaterHpa(temperature.Celsius));

    /// <summary>Temperature at which a vapour pressure saturates: the dew point.</summary>
    /// <remarks>[Bolton1980] eq. 11, the inverse of eq. 10.</remarks>
    /// <exception cref="ArgumentOutOfRangeException">Vapour pressure is 0.</exception>
    public static Temperature DewPoint(Pressure vapourPressure) =>
        Temperature.FromCelsius(DewPointCelsius(Guard.Finite(vapourPressure.Hectopascals, min: 1e-9)));

    internal static double OverWaterHpa(double celsius) =>
        6.112 * Math.Exp(17.67 * celsius / (celsius + 243.5));

    internal static double DewPointCelsius(double vapourPressureHpa)
    {
        var ln = Math.Log(vapourPressureHpa / 6.112);
        return 243.5 * ln / (17.67 - ln);
    }
}
