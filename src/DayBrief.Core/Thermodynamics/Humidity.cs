using DayBrief.Units;

namespace DayBrief.Thermodynamics;

/// <summary>Water vapour in the air, in the measures a sounding needs.</summary>
public static class Humidity
{
    /// <summary>Mixing ratio of air whose dew point and pressure are known.</summary>
    /// <remarks>[AMS] "mixing ratio": w = ε e/(p − e), e from [Bolton1980] eq. 10.</remarks>
    /// <exception cref="ArgumentOutOfRangeException">The vapour pressure reaches the air pressure.</exception>
    public static MixingRatio Of(Temperature dewPoint, Pressure pressure) =>
        MixingRatio.FromKilogramsPerKilogram(MixingRatioKgKg(dewPoint.Celsius, pressure.Hectopascals));

    /// <summary>Dew point of air whose mixing ratio and pressure are known.</summary>
    /// <remarks>[AMS]: e = p w/(ε + w), then [Bolton1980] eq. 11.</remarks>
    /// <exception cref="ArgumentOutOfRangeException">Dry air (no dew point).</exception>
    public static Temperature DewPoint(MixingRatio mixingRatio, Pressure pressure) =>
        Temperature.FromCelsius(DewPointCelsius(
            Guard.Finite(mixingRatio.KilogramsPerKilogram, min: 1e-12), pressure.Hectopascals));

    /// <summary>Dew point of air at a temperature and relative humidity.</summary>
    /// <remarks>[Bolton1980] eqs. 10 and 11; relative humidity over water, as in soundings [WMO8].</remarks>
    /// <exception cref="ArgumentOutOfRangeException">Humidity not above 0 and at most 110 %.</exception>
    public static Temperature DewPoint(Temperature temperature, double relativeHumidityPercent) =>
        Temperature.FromCelsius(Saturation.DewPointCelsius(
            Guard.Finite(relativeHumidityPercent, 0.01, 110) / 100 * Saturation.OverWaterHpa(temperature.Celsius)));

    /// <summary>Relative humidity over water, per cent.</summary>
    /// <remarks>[AMS] "relative humidity": e(T_d)/e(T), [Bolton1980] eq. 10.</remarks>
    public static double RelativePercent(Temperature temperature, Temperature dewPoint) =>
        100 * Saturation.OverWaterHpa(dewPoint.Celsius) / Saturation.OverWaterHpa(temperature.Celsius);

    /// <summary>Temperature that dry air would need for the same density at the same pressure.</summary>
    /// <remarks>[AMS] "virtual temperature": T (w + ε)/(ε (1 + w)).</remarks>
    public static Temperature Virtual(Temperature temperature, MixingRatio mixingRatio) =>
        Temperature.FromKelvins(VirtualKelvins(temperature.Kelvins, mixingRatio.KilogramsPerKilogram));

    internal static double MixingRatioKgKg(double dewPointCelsius, double pressureHpa)
    {
        var e = Saturation.OverWaterHpa(dewPointCelsius);
        return Air.Epsilon * e / (pressureHpa - e);
    }

    internal static double DewPointCelsius(double mixingRatioKgKg, double pressureHpa) =>
        Saturation.DewPointCelsius(pressureHpa * mixingRatioKgKg / (Air.Epsilon + mixingRatioKgKg));

    internal static double VirtualKelvins(double kelvins, double mixingRatioKgKg) =>
        kelvins * (mixingRatioKgKg + Air.Epsilon) / (Air.Epsilon * (1 + mixingRatioKgKg));
}
