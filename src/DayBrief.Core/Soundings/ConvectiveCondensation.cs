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
    /// <summary>The lowest crossing of the surface air's mixing-ratio line with the ascent.</summary>
    /// <remarks>[AMS] "convective condensation level", "convective temperature". Where the line crosses several times
    /// the lowest is taken: it is the one that makes cloud first. Null without a surface dew point, or when the ascent
    /// ends below the crossing.</remarks>
    public static ConvectiveCondensation? Of(Profile profile) =>
        profile.SurfaceDewPoint is { } dewPoint
            ? Of(profile, Humidity.Of(dewPoint, profile.SurfacePressure))
            : null;

    /// <summary>The lowest crossing of a given mixing-ratio line with the ascent.</summary>
    /// <remarks>As <see cref="Of(Profile)"/>.</remarks>
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
        double Spread(double p) =>
            profile.KelvinsAt(p) - Temperature.ZeroCelsius - Humidity.DewPointCelsius(mixingRatio, p);
        var hpa = profile.Hpa;
        if (mixingRatio <= 0)
            return null;
        if (Spread(hpa[0]) <= 0)
            return hpa[0];
        for (var i = 1; i < hpa.Length; i++)
        {
            if (Spread(hpa[i]) <= 0)
                return Root.Between(Spread, hpa[i], hpa[i - 1]);
        }

        return null;
    }
}
