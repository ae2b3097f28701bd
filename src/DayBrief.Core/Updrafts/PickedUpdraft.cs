using DayBrief.Units;

namespace DayBrief.Updrafts;

/// <summary>The picked thermal of a convective layer at one height: the one that gliders stay in, wider and stronger than the average one.</summary>
/// <param name="CoreMs">Air in the centre, m/s; 0 where it carries nothing.</param>
/// <param name="RadiusM">Radius at which the lift ends, m.</param>
/// <remarks>The one step from the average to the picked thermal; docs/technique.md has the grounds.
/// Strength: w* times <see cref="CoreOverWStar"/>, 2.2 standard deviations of the vertical speed in the middle of the layer
/// (σ_w = 1.34·x^⅓·(1 − 0.8·x)·w* [Lenschow1980]): pilots fly through many and stay in the strong ones.
/// Width: the average radius ([Allen2006] equation 12) times <see cref="WidthOverAverage"/>: patches of lift that glider pilots
/// cross are 330 to 470 m wide, which is π/4 of the diameter on the average of random crossings and gives 2.0 to 2.8; within that it was
/// set by what a wider circle costs (flight recorders, given half);
/// going over smoothly into <see cref="LeastRadiusM"/> in shallow layers.
/// Shape: 1 − (r/R)², the textbook's [Reichmann1978].
/// Height: grows as x^⅓ near the ground, as in equation 11, and is steady from 0.4 of the layer, since strong ones neither mix
/// in as much nor end as low as those that make the mean; it ends with the layer under a blue sky, and feeds the cumulus with
/// w* through its base [Neggers2006]. Smooth in every parameter.</remarks>
public readonly record struct PickedUpdraft(double CoreMs, double RadiusM)
{
    /// <summary>Steady core over w*.</summary>
    public const double CoreOverWStar = 1.5;

    /// <summary>Radius over the average thermal's.</summary>
    public const double WidthOverAverage = 2.6;

    /// <summary>Share of the steady core that goes through the base of the cumulus it feeds: w* of <see cref="CoreOverWStar"/>.</summary>
    public const double CarriedThroughBase = 1 / CoreOverWStar;

    /// <summary>Least radius at 0.4 of the depth, m: the order of the diameters in [FAA-13A].</summary>
    public const double LeastRadiusM = 120;

    /// <summary>Share of the depth for which size is quoted [Allen2006].</summary>
    public const double QuotedAt = 0.4;

    /// <summary>Share of the depth at which the growth near the ground has reached nine tenths.</summary>
    internal const double GrownAt = 0.3;

    /// <summary>The picked thermal at a height.</summary>
    /// <param name="velocityScale">w*.</param>
    /// <param name="depth">Depth of the layer, z_i.</param>
    /// <param name="height">Height above the ground.</param>
    /// <param name="cloudBase">Base of the cumulus; null under a blue sky.</param>
    /// <param name="fed">Whether the thermals feed the cumulus: 0 not at all, 1 fully.</param>
    /// <exception cref="ArgumentOutOfRangeException">An argument outside its range.</exception>
    public static PickedUpdraft At(Speed velocityScale, Height depth, Height height, Height? cloudBase = null, double fed = 1)
    {
        var depthM = Guard.Finite(depth.Metres, 1, name: nameof(depth));
        var wStar = Guard.Finite(velocityScale.MetresPerSecond, 0, name: nameof(velocityScale));
        var share = cloudBase is null ? 0 : Guard.Finite(fed, 0, 1);
        var topM = share > 0 ? depthM + (share * (Guard.Finite(cloudBase!.Value.Metres, 1, name: nameof(cloudBase)) - depthM)) : depthM;
        var heightM = Guard.Finite(height.Metres, 0, name: nameof(height));
        return new(
            CoreOverWStar * wStar * Strength(heightM, depthM, topM, share * CarriedThroughBase),
            RadiusAtM(heightM, depthM, FullRadiusM(depthM)));
    }

    /// <summary>Air at a distance from the axis, m/s, nothing beyond the radius.</summary>
    public double LiftMs(double distanceM) => CoreMs * Math.Max(0, 1 - (distanceM * distanceM / (RadiusM * RadiusM)));

    /// <summary>Core at a height over the steady core, 0 to 1.</summary>
    internal static double Strength(double heightM, double depthM, double topM, double carried)
    {
        if (heightM <= 0)
            return 0;
        var (grown, up) = (GrownAt * depthM / heightM, Math.Min(1, heightM / topM));
        var left = Math.Max(0, 1 - ((1 - carried) * Math.Pow(up, 10)));
        return left / Math.Cbrt(Math.Cbrt(1 + (grown * grown * grown)));
    }

    /// <summary>Radius at <see cref="QuotedAt"/>, m.</summary>
    internal static double FullRadiusM(double depthM)
    {
        var wide = WidthOverAverage * AverageRadius(QuotedAt) * depthM;
        return Math.Cbrt((wide * wide * wide) + (LeastRadiusM * LeastRadiusM * LeastRadiusM));
    }

    /// <summary>Radius at a height, m, from that at <see cref="QuotedAt"/>: it widens upwards as the average one does.</summary>
    internal static double RadiusAtM(double heightM, double depthM, double quotedM) =>
        quotedM * AverageRadius(heightM / depthM) / AverageRadius(QuotedAt);

    /// <summary>Equation 12 over the depth; beyond the layer as at its top.</summary>
    internal static double AverageRadius(double share)
    {
        var x = Math.Clamp(share, 1e-6, 1);
        return 0.102 * Math.Cbrt(x) * (1 - (0.25 * x));
    }
}
