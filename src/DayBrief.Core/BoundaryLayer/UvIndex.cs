using DayBrief.Units;

namespace DayBrief.BoundaryLayer;

/// <summary>The global solar ultraviolet index under a clear sky at sea level.</summary>
public static class UvIndex
{
    /// <summary>Index from which protection is advised.</summary>
    /// <remarks>[WHO2002]: low below 3, moderate 3 to 5, high 6 and 7, very high 8 to 10, extreme from 11.</remarks>
    public const double ProtectionFrom = 3;

    /// <summary>Ozone column taken where none is known, Dobson units: the reference of [Madronich2007]. Spring at middle
    /// latitudes has more, so the index is rather too high than too low there.</summary>
    public const double UsualOzoneDobson = 300;

    /// <summary>The index for a height of the sun.</summary>
    /// <remarks>[Madronich2007]: 12.5 μ^2.42 (Ω/300)^−1.23, for clean air without cloud over dark ground.</remarks>
    /// <param name="cosZenith">Cosine of the sun's zenith angle; below the horizon the index is 0.</param>
    /// <param name="ozoneDobson">Ozone column, Dobson units.</param>
    /// <exception cref="ArgumentOutOfRangeException">Cosine outside −1 to 1, or ozone outside 100 to 600.</exception>
    public static double ClearSky(double cosZenith, double ozoneDobson = UsualOzoneDobson)
    {
        var mu = Math.Max(0, Guard.Finite(cosZenith, -1, 1));
        return 12.5 * Math.Pow(mu, 2.42) * Math.Pow(Guard.Finite(ozoneDobson, 100, 600) / 300, -1.23);
    }
}
