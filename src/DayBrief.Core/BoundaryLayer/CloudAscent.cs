using DayBrief.Thermodynamics;
using DayBrief.Units;

namespace DayBrief.BoundaryLayer;

/// <summary>How far a cumulus rises above its base.</summary>
/// <param name="TopM">Height of its top above ground.</param>
/// <param name="TopKelvins">Air temperature at its top.</param>
/// <param name="OutOfAscent">It rises out of the ascent: the true top is higher.</param>
/// <param name="RoomQ">Water that the air around it takes from base to top until it is saturated, m kg/kg.</param>
internal readonly record struct CloudAscent(double TopM, double TopKelvins, bool OutOfAscent, double RoomQ)
{
    /// <summary>ε of ordinary cumulus, m⁻¹.</summary>
    public const double OrdinaryMixing = 0.001;

    /// <summary>ε of the broadest of a day, m⁻¹.</summary>
    public const double BroadMixing = 0.0004;

    private const double StepM = 100;

    /// <summary>The top of a cloud that mixes with the air around it as it rises.</summary>
    /// <remarks>Entraining plume: temperature follows the pseudoadiabat [AMS], and temperature and water approach those
    /// around at the rate ε; rising speed from d(w²/2)/dz = B/2 − ε w² [SimpsonWiggert1969], from the speed of a strong
    /// thermal at the base. Steps of 100 m. ε 0.001 m⁻¹ for ordinary cumulus (shallow cumulus large-eddy runs have 0.0015–0.002, [Siebesma2003], for
    /// the mean of all; the tallest mix less), 0.0004 m⁻¹ for the broadest of a day.</remarks>
    public static CloudAscent From(Column column, double baseM, double baseHpa, double baseKelvins, double speedMs, double mixingPerM)
    {
        var (z, hpa, kelvins, energy, room) = (baseM, baseHpa, baseKelvins, speedMs * speedMs / 2, 0.0);
        while (z + StepM < column.TopM)
        {
            var around = column.At(z + (StepM / 2));
            var middle = hpa * Math.Exp(-Air.Gravity * StepM / 2 / (Air.GasConstant * kelvins));
            var aroundKelvins = around.Theta * Math.Pow(middle / 1000, Air.Kappa);
            var water = Humidity.MixingRatioKgKg(kelvins - Temperature.ZeroCelsius, middle);
            room += StepM * Math.Max(0, Humidity.MixingRatioKgKg(aroundKelvins - Temperature.ZeroCelsius, middle) - around.Q);
            var drop = MoistAdiabat.SlopePerLogPressure(kelvins, middle) * Air.Gravity / (Air.GasConstant * kelvins);
            // Mixing in drier air evaporates cloud: the parcel pays latent heat for it, as far as saturation moves.
            var capacity = 1 + (Air.LatentHeat * Air.LatentHeat * water * Air.Epsilon
                / (Air.GasConstant * Air.SpecificHeat * kelvins * kelvins));
            var mixing = mixingPerM * ((kelvins - aroundKelvins)
                + (Air.LatentHeat / Air.SpecificHeat * Math.Max(0, water - around.Q))) / capacity;
            kelvins -= StepM * (drop + mixing);
            var excess = Humidity.VirtualKelvins(kelvins + (drop * StepM / 2), water)
                - Humidity.VirtualKelvins(aroundKelvins, around.Q);
            energy += StepM * ((Air.Gravity * excess / aroundKelvins / 2) - (2 * mixingPerM * energy));
            hpa *= Math.Exp(-Air.Gravity * StepM / (Air.GasConstant * kelvins));
            z += StepM;
            if (energy <= 0 || hpa < 150)
                return new(z, kelvins, false, room);
        }

        return new(z, kelvins, true, room);
    }
}
