using DayBrief.Thermodynamics;

namespace DayBrief.Soundings;

/// <summary>All the water vapour of a column, as if it lay on the ground.</summary>
public static class PrecipitableWater
{
    /// <summary>In millimetres (kg m⁻²); null with fewer than two dew points.</summary>
    /// <remarks>[AMS] "precipitable water" in the form of [MetPy]: (1/g) ∫ w dp over the levels that have a dew point,
    /// trapezoids in pressure.</remarks>
    public static double? MillimetresOf(Profile profile)
    {
        if (profile.MoistHpa.Length < 2)
            return null;
        var sum = 0.0;
        for (var i = 1; i < profile.MoistHpa.Length; i++)
        {
            sum += (Vapour(profile, i - 1) + Vapour(profile, i)) / 2
                * (profile.MoistHpa[i - 1] - profile.MoistHpa[i]) * 100;
        }

        return sum / Air.Gravity;
    }

    private static double Vapour(Profile profile, int i) =>
        Humidity.MixingRatioKgKg(profile.DewPointCelsius[i], profile.MoistHpa[i]);
}
