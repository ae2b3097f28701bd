using DayBrief.Units;

namespace DayBrief.Soundings;

/// <summary>A layer in which it gets warmer upwards.</summary>
/// <param name="Base">Height of its lower edge above the surface level.</param>
/// <param name="Top">Height of its upper edge above the surface level.</param>
/// <param name="BasePressure">Pressure of its lower edge.</param>
/// <param name="TopPressure">Pressure of its upper edge.</param>
/// <param name="Strength">Warming from its lower to its upper edge.</param>
public readonly record struct Inversion(
    Height Base, Height Top, Pressure BasePressure, Pressure TopPressure, TemperatureDifference Strength)
{
    /// <summary>All inversions of an ascent from the ground up; neighbouring layers that both warm upwards are one.</summary>
    /// <remarks>[AMS] "inversion". Weaker ones than 0.2 K, the rounding of a coded ascent (WMO-No. 306 codes tenths), are left out.</remarks>
    public static IReadOnlyList<Inversion> Of(Profile profile)
    {
        var found = new List<Inversion>();
        var kelvins = profile.Kelvins;
        for (var i = 0; i + 1 < kelvins.Length; i++)
        {
            var start = i;
            while (i + 1 < kelvins.Length && kelvins[i + 1] > kelvins[i])
                i++;
            if (kelvins[i] - kelvins[start] >= 0.2)
                found.Add(Between(profile, start, i));
        }

        return found;
    }

    private static Inversion Between(Profile profile, int start, int end) => new(
        Height.FromMetres(profile.HeightAglM[start]),
        Height.FromMetres(profile.HeightAglM[end]),
        Pressure.FromHectopascals(profile.Hpa[start]),
        Pressure.FromHectopascals(profile.Hpa[end]),
        TemperatureDifference.FromKelvins(profile.Kelvins[end] - profile.Kelvins[start]));
}
