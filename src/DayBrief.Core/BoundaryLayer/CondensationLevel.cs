using DayBrief.Thermodynamics;
using DayBrief.Units;

namespace DayBrief.BoundaryLayer;

/// <summary>How far stirred air must rise before it condenses.</summary>
public static class CondensationLevel
{
    /// <summary>Height of the LCL above the ground for air with this temperature and mixing ratio at the ground; null
    /// for air without water vapour.</summary>
    /// <remarks>[Bolton1980] eq. 21 in terms of vapour pressure, T_L = 2840/(3.5 ln T − ln e − 4.805) + 55 K (within
    /// 0.1 K), and the dry-adiabatic lapse rate. 0 for saturated air.</remarks>
    public static Height? Of(Temperature temperature, MixingRatio mixingRatio, Pressure surface) =>
        mixingRatio.KilogramsPerKilogram > 0 && surface.Hectopascals > 0
            ? Height.FromMetres(M(temperature.Kelvins, mixingRatio.KilogramsPerKilogram, surface.Hectopascals))
            : null;

    internal static double M(double kelvins, double mixingRatioKgKg, double surfaceHpa)
    {
        var e = surfaceHpa * mixingRatioKgKg / (Air.Epsilon + mixingRatioKgKg);
        var condensation = (2840 / ((3.5 * Math.Log(kelvins)) - Math.Log(e) - 4.805)) + 55;
        return Math.Max(0, kelvins - condensation) / Air.DryLapseRate;
    }
}
