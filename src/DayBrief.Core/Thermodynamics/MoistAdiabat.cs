using DayBrief.Units;

namespace DayBrief.Thermodynamics;

/// <summary>Saturated air moved up or down, its condensed water falling out (pseudoadiabat).</summary>
public static class MoistAdiabat
{
    private const double StepLogPressure = 0.02;

    /// <summary>Temperature of saturated air after it has moved from one pressure to another.</summary>
    /// <remarks>[AMS] "pseudoadiabatic lapse rate" in the form of [MetPy]:
    /// dT/dp = (1/p)(R_d T + L w_s)/(c_p + L² w_s ε/(R_d T²)), integrated in ln p by fourth-order Runge–Kutta with
    /// steps of 0.02 (about 20 hPa near the ground). Valid while it is liquid water that condenses.</remarks>
    /// <exception cref="ArgumentOutOfRangeException">A pressure is not above 0.</exception>
    public static Temperature Moved(Temperature temperature, Pressure from, Pressure to)
    {
        Guard.Finite(from.Hectopascals, min: 1, name: nameof(from));
        Guard.Finite(to.Hectopascals, min: 1, name: nameof(to));
        return Temperature.FromKelvins(MovedKelvins(temperature.Kelvins, from.Hectopascals, to.Hectopascals));
    }

    internal static double MovedKelvins(double kelvins, double fromHpa, double toHpa)
    {
        var range = Math.Log(toHpa / fromHpa);
        var steps = Math.Max(1, (int)Math.Ceiling(Math.Abs(range) / StepLogPressure));
        var h = range / steps;
        var t = kelvins;
        for (var i = 0; i < steps; i++)
        {
            var lnP = Math.Log(fromHpa) + (i * h);
            var k1 = SlopePerLogPressure(t, Math.Exp(lnP));
            var k2 = SlopePerLogPressure(t + (h / 2 * k1), Math.Exp(lnP + (h / 2)));
            var k3 = SlopePerLogPressure(t + (h / 2 * k2), Math.Exp(lnP + (h / 2)));
            var k4 = SlopePerLogPressure(t + (h * k3), Math.Exp(lnP + h));
            t += h / 6 * (k1 + (2 * k2) + (2 * k3) + k4);
        }

        return t;
    }

    /// <summary>dT/d ln p of saturated air, K.</summary>
    internal static double SlopePerLogPressure(double kelvins, double pressureHpa)
    {
        var w = Humidity.MixingRatioKgKg(kelvins - Temperature.ZeroCelsius, pressureHpa);
        return ((Air.GasConstant * kelvins) + (Air.LatentHeat * w))
            / (Air.SpecificHeat
                + (Air.LatentHeat * Air.LatentHeat * w * Air.Epsilon / (Air.GasConstant * kelvins * kelvins)));
    }
}
