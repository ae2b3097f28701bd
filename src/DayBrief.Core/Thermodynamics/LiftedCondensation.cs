using DayBrief.Units;

namespace DayBrief.Thermodynamics;

/// <summary>Where lifted air first condenses: the lifted condensation level (LCL).</summary>
/// <param name="Pressure">Its pressure.</param>
/// <param name="Temperature">Temperature of the lifted air there.</param>
public readonly record struct LiftedCondensation(Pressure Pressure, Temperature Temperature)
{
    /// <summary>The LCL of air with this pressure, temperature and dew point.</summary>
    /// <remarks>[AMS] "lifted condensation level": the dry adiabat meets the saturation curve of constant mixing
    /// ratio; solved by the fixed-point iteration p ← p₀ (T_d(w, p)/T₀)^{1/κ}, each step contracting about sixfold,
    /// to 10⁻⁶ hPa. Dew point at or above the temperature: condenses where it is.</remarks>
    public static LiftedCondensation Of(Pressure pressure, Temperature temperature, Temperature dewPoint)
    {
        var (hpa, kelvins) = Solve(pressure.Hectopascals, temperature.Kelvins, dewPoint.Celsius);
        return new(Pressure.FromHectopascals(hpa), Temperature.FromKelvins(kelvins));
    }

    internal static (double PressureHpa, double Kelvins) Solve(double surfaceHpa, double kelvins, double dewPointCelsius)
    {
        var w = Humidity.MixingRatioKgKg(dewPointCelsius, surfaceHpa);
        var hpa = surfaceHpa;
        for (var i = 0; i < 100; i++)
        {
            var dewPointKelvins = Humidity.DewPointCelsius(w, hpa) + Temperature.ZeroCelsius;
            var next = Math.Min(surfaceHpa, surfaceHpa * Math.Pow(dewPointKelvins / kelvins, 1 / Air.Kappa));
            var change = Math.Abs(next - hpa);
            hpa = next;
            if (change < 1e-6)
                break;
        }

        return (hpa, DryAdiabat.MovedKelvins(kelvins, surfaceHpa, hpa));
    }
}
