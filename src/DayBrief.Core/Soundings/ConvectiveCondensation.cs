using DayBrief.Numerics;
using DayBrief.Thermodynamics;
using DayBrief.Units;

namespace DayBrief.Soundings;

/// <summary>The convective condensation level (CCL): base of the first cumulus when the surface warms enough.</summary>
/// <param name="Pressure">Its pressure.</param>
/// <param name="Temperature">The ascent's temperature there.</param>
/// <param name="Height">Its height above the surface level.</param>
/// <param name="ConvectiveTemperature">Surface temperature whose dry adiabat reaches it.</param>
public readonly record struct ConvectiveCondensation(
    Pressure Pressure,
    Temperature Temperature,
    Height Height,
    Temperature ConvectiveTemperature)
{
    /// <summary>Tenths of a degree are what coded ascents report [WMO306].</summary>
    private const double Rounding = 0.1;

    /// <summary>The lowest crossing of the surface air's mixing-ratio line with the ascent.</summary>
    /// <remarks>[AMS] "convective condensation level", "convective temperature". Where the line crosses several times
    /// the lowest is taken: it is the one that makes cloud first. Null without a surface dew point, or when the ascent
    /// ends below the crossing.</remarks>
    public static ConvectiveCondensation? Of(Profile profile) =>
        profile.SurfaceDewPoint is { } dewPoint
            ? Of(profile, Humidity.Of(dewPoint, profile.SurfacePressure))
            : null;

    /// <summary>The lowest crossing of a given mixing-ratio line with the ascent.</summary>
    /// <remarks>As <see cref="Of(Profile)"/>. Saturated ground (a dew or fog morning) lies on the line itself, and rounding would decide
    /// whether that is a crossing. So a surface within 0.1 °C of saturation, the rounding of a coded ascent [WMO306], is taken as 0.1 °C
    /// short of it to find which crossing is meant: where it gets warmer above, the one over the warm air; where it gets colder, one
    /// that leads down to the ground. The values are those of the line itself.</remarks>
    public static ConvectiveCondensation? Of(Profile profile, MixingRatio mixingRatio)
    {
        if (SolveHpa(profile, mixingRatio.KilogramsPerKilogram) is not { } hpa)
            return null;
        var kelvins = profile.KelvinsAt(hpa);
        return new(
            Pressure.FromHectopascals(hpa),
            Temperature.FromKelvins(kelvins),
            Height.FromMetres(profile.HeightAglMAt(hpa)),
            Temperature.FromKelvins(DryAdiabat.MovedKelvins(kelvins, hpa, profile.SurfacePressure.Hectopascals)));
    }

    private static double? SolveHpa(Profile profile, double mixingRatio)
    {
        if (mixingRatio <= 0)
            return null;
        var shortOfSaturation = Humidity.MixingRatioKgKg(profile.Kelvins[0] - Temperature.ZeroCelsius - Rounding, profile.Hpa[0]);
        return mixingRatio <= shortOfSaturation
            ? Crossing(profile, mixingRatio)
            : Crossing(profile, shortOfSaturation) is { } drier ? Below(profile, mixingRatio, drier) : null;
    }

    private static double? Crossing(Profile profile, double mixingRatio)
    {
        var hpa = profile.Hpa;
        for (var i = 1; i < hpa.Length; i++)
        {
            if (Spread(profile, mixingRatio, hpa[i]) <= 0)
                return Root.Between(p => Spread(profile, mixingRatio, p), hpa[i], hpa[i - 1]);
        }

        return null;
    }

    /// <summary>The highest crossing at or below a pressure at which the line is warmer than the ascent; the ground if there is none.</summary>
    private static double Below(Profile profile, double mixingRatio, double top)
    {
        var hpa = profile.Hpa;
        var upper = top;
        for (var i = hpa.Length - 1; i >= 0; i--)
        {
            if (hpa[i] <= top)
                continue;
            if (Spread(profile, mixingRatio, hpa[i]) > 0)
                return Spread(profile, mixingRatio, upper) > 0 ? upper : Root.Between(p => Spread(profile, mixingRatio, p), upper, hpa[i]);
            upper = hpa[i];
        }

        return hpa[0];
    }

    private static double Spread(Profile profile, double mixingRatio, double hpa) =>
        profile.KelvinsAt(hpa) - Temperature.ZeroCelsius - Humidity.DewPointCelsius(mixingRatio, hpa);
}
