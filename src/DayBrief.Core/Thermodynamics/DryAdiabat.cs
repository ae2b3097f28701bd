using DayBrief.Units;

namespace DayBrief.Thermodynamics;

/// <summary>Unsaturated air moved up or down without exchange of heat.</summary>
public static class DryAdiabat
{
    private const double ReferenceHpa = 1000;

    /// <summary>Temperature of the air when it is brought dry-adiabatically to 1000 hPa.</summary>
    /// <remarks>[AMS] "potential temperature" (Poisson's equation), κ of dry air 2/7.</remarks>
    public static Temperature PotentialTemperature(Temperature temperature, Pressure pressure) =>
        Temperature.FromKelvins(PotentialKelvins(temperature.Kelvins, pressure.Hectopascals));

    /// <summary>Temperature of the air after it has moved dry-adiabatically from one pressure to another.</summary>
    /// <remarks>[AMS] "Poisson equation": T₂ = T₁ (p₂/p₁)^κ.</remarks>
    /// <exception cref="ArgumentOutOfRangeException">The starting pressure is 0.</exception>
    public static Temperature Moved(Temperature temperature, Pressure from, Pressure to)
    {
        Guard.Finite(from.Hectopascals, min: 1e-6, name: nameof(from));
        return Temperature.FromKelvins(MovedKelvins(temperature.Kelvins, from.Hectopascals, to.Hectopascals));
    }

    internal static double PotentialKelvins(double kelvins, double pressureHpa) =>
        MovedKelvins(kelvins, pressureHpa, ReferenceHpa);

    internal static double MovedKelvins(double kelvins, double fromHpa, double toHpa) =>
        kelvins * Math.Pow(toHpa / fromHpa, Air.Kappa);
}
