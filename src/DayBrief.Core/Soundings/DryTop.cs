using DayBrief.Numerics;
using DayBrief.Thermodynamics;
using DayBrief.Units;

namespace DayBrief.Soundings;

/// <summary>How high a dry thermal rises from a given surface temperature: where its dry adiabat meets the ascent.</summary>
/// <param name="Pressure">Pressure of the meeting point.</param>
/// <param name="Height">Its height above the surface level.</param>
public readonly record struct DryTop(Pressure Pressure, Height Height)
{
    /// <summary>The lowest level above the surface where the dry adiabat is no longer warmer than the ascent.</summary>
    /// <remarks>[AMS] "parcel method"; without virtual correction and not cut at condensation. Zero height when the
    /// surface air is no warmer than what lies on it; null when it is colder than the surface level, and when the adiabat
    /// stays warmer up to the ascent's top.</remarks>
    public static DryTop? From(Profile profile, Temperature surfaceTemperature)
    {
        var hpa = SolveHpa(profile, surfaceTemperature.Kelvins);
        return hpa is { } top
            ? new DryTop(Pressure.FromHectopascals(top), Height.FromMetres(profile.HeightAglMAt(top)))
            : null;
    }

    /// <summary>Ascent minus dry adiabat at a pressure: the thermal index, negative where the thermal is warmer.</summary>
    /// <remarks>[FAA-13A] glossary "thermal index", sign as there. Null outside the ascent.</remarks>
    public static TemperatureDifference? ThermalIndex(Profile profile, Temperature surfaceTemperature, Pressure at) =>
        profile.TemperatureAt(at) is { } ascent
            ? ascent - DryAdiabat.Moved(surfaceTemperature, profile.SurfacePressure, at)
            : null;

    internal static double? SolveHpa(Profile profile, double surfaceKelvins)
    {
        var hpa = profile.Hpa;
        var kelvins = profile.Kelvins;
        var surfaceHpa = hpa[0];
        if (surfaceKelvins < kelvins[0])
            return null;
        for (var i = 1; i < hpa.Length; i++)
        {
            if (DryAdiabat.MovedKelvins(surfaceKelvins, surfaceHpa, hpa[i]) > kelvins[i])
                continue;
            if (DryAdiabat.MovedKelvins(surfaceKelvins, surfaceHpa, hpa[i - 1]) <= kelvins[i - 1])
                return hpa[i - 1];
            double Excess(double p) =>
                DryAdiabat.MovedKelvins(surfaceKelvins, surfaceHpa, p) - profile.KelvinsAt(p);
            return Root.Between(Excess, hpa[i], hpa[i - 1]);
        }

        return null;
    }
}
