using DayBrief.Thermodynamics;
using DayBrief.Units;

namespace DayBrief.Soundings;

/// <summary>The air of the lowest layer, stirred and brought to the surface pressure.</summary>
/// <param name="Temperature">Its temperature at the surface pressure.</param>
/// <param name="DewPoint">Its dew point at the surface pressure.</param>
/// <param name="Condensation">Its lifted condensation level.</param>
public readonly record struct MixedParcel(Temperature Temperature, Temperature DewPoint, LiftedCondensation Condensation)
{
    /// <summary>The parcel of the lowest layer of a given depth in pressure.</summary>
    /// <remarks>As [MetPy] mixed_parcel: pressure-weighted means of potential temperature and mixing ratio. Null without
    /// dew points in the layer, or when the ascent is shallower than the layer.</remarks>
    public static MixedParcel? Of(Profile profile, double depthHpa)
    {
        var bottom = profile.SurfacePressure.Hectopascals;
        var top = bottom - Guard.Finite(depthHpa, min: 1);
        if (profile.SurfaceDewPoint is null || profile.MoistHpa[^1] > top || profile.Hpa[^1] > top)
            return null;
        var theta = Mean(profile.MoistHpa, bottom, top, p => DryAdiabat.PotentialKelvins(profile.KelvinsAt(p), p));
        var w = Mean(profile.MoistHpa, bottom, top, p => Humidity.MixingRatioKgKg(profile.DewPointCelsiusAt(p), p));
        var kelvins = DryAdiabat.MovedKelvins(theta, 1000, bottom);
        var dewPoint = Math.Min(Humidity.DewPointCelsius(w, bottom), kelvins - Temperature.ZeroCelsius);
        var temperature = Temperature.FromKelvins(kelvins);
        return new(
            temperature,
            Temperature.FromCelsius(dewPoint),
            LiftedCondensation.Of(profile.SurfacePressure, temperature, Temperature.FromCelsius(dewPoint)));
    }

    private static double Mean(ReadOnlySpan<double> hpa, double bottom, double top, Func<double, double> value)
    {
        var (sum, lower, lowerValue) = (0.0, bottom, value(bottom));
        foreach (var level in hpa)
        {
            if (level >= bottom)
                continue;
            var upper = Math.Max(level, top);
            var upperValue = value(upper);
            sum += (lowerValue + upperValue) / 2 * (lower - upper);
            (lower, lowerValue) = (upper, upperValue);
            if (level <= top)
                break;
        }

        return sum / (bottom - top);
    }
}
