using DayBrief.Units;
using DayBrief.Updrafts;

namespace DayBrief.Flight.Thermals;

/// <summary>Allen's updraft at one height: its size, its strength and how it falls off with distance.</summary>
/// <remarks>
/// [Allen2006] equations 11 to 23 with the printed program deciding where transcriptions of the text differ. Lengths in
/// metres, speeds in m/s; nothing rises at or above the depth of the convective layer. The neighbours' shares of the area
/// come from the paper's own density, 0.6/(depth·radius) updrafts per square metre, unless a number per area is given.
/// </remarks>
public sealed class AllenUpdraft
{
    internal const double MixedOver = 0.2;

    private readonly AllenShape _shape;
    private readonly bool _inside;
    private readonly bool _smooth;

    private AllenUpdraft(double wStarMs, double depthM, double heightM, double radiusGain, double? updraftsPerM2, bool smooth)
    {
        HeightFraction = heightM / depthM;
        _inside = HeightFraction < 1;
        _smooth = smooth;
        MeanUpdraftMs = MeanUpdraft(wStarMs, HeightFraction);
        RadiusM = Radius(depthM, HeightFraction, radiusGain);
        CoreRatio = AllenProfile.CoreRatio(RadiusM);
        _shape = smooth ? AllenShape.Between(CoreRatio) : AllenShape.For(CoreRatio);
        CentreUpdraftMs = MeanUpdraftMs * CoreFactor(CoreRatio);
        RingFactor = Ring(HeightFraction);
        var covered = Math.PI * RadiusM * RadiusM * (updraftsPerM2 ?? Spacing.UpdraftsPerSquareMetre(depthM, RadiusM));
        SurroundingSinkMs = Surrounding(MeanUpdraftMs, RingFactor, covered);
    }

    /// <summary>Height over depth, dimensionless.</summary>
    public double HeightFraction { get; }

    /// <summary>Outer radius r₂ of the updraft, m (equation 12).</summary>
    public double RadiusM { get; }

    /// <summary>Radius r₁ of the core over r₂ (equation 13).</summary>
    public double CoreRatio { get; }

    /// <summary>Mean updraft over the disc of radius r₂, m/s (equation 11); negative above 0.909 of the depth.</summary>
    public double MeanUpdraftMs { get; }

    /// <summary>Updraft in the centre, m/s (equations 14 and 15).</summary>
    public double CentreUpdraftMs { get; }

    /// <summary>Strength of the sinking ring, 0 to 1 (equation 17): none in the lower half and above 0.9 of the depth.</summary>
    public double RingFactor { get; }

    /// <summary>Air's vertical speed between the updrafts, m/s, never above 0 (equations 21 and 22).</summary>
    public double SurroundingSinkMs { get; }

    internal AllenShape Shape => _shape;

    /// <summary>The updraft of a convective layer at one height, exactly as the printed program has it.</summary>
    /// <param name="convectiveVelocityScale">Deardorff's w*, above 0.</param>
    /// <param name="depth">Depth of the convective layer, above 0.</param>
    /// <param name="height">Height above the ground, from 0.</param>
    /// <param name="updraftsPerSquareMetre">Updrafts per area for the surrounding sink; the paper's density if omitted.</param>
    /// <exception cref="ArgumentOutOfRangeException">An argument outside its range.</exception>
    public static AllenUpdraft At(Speed convectiveVelocityScale, Height depth, Height height, double? updraftsPerSquareMetre = null)
    {
        var wStar = Guard.Finite(convectiveVelocityScale.MetresPerSecond, double.Epsilon, 20, nameof(convectiveVelocityScale));
        var zi = Guard.Finite(depth.Metres, 1, 20_000, nameof(depth));
        return new(wStar, zi, Guard.Finite(height.Metres, 0, name: nameof(height)), 1, updraftsPerSquareMetre, smooth: false);
    }

    /// <summary>The same without the printed program's jumps between rows of the shape table, wider by a gain.</summary>
    internal static AllenUpdraft Smooth(double wStarMs, double depthM, double heightM, double radiusGain) =>
        new(wStarMs, depthM, heightM, radiusGain, null, smooth: true);

    /// <summary>Vertical speed of the air at a distance from the axis, m/s.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Negative or not finite distance.</exception>
    public Speed UpdraftAt(double distanceM) => Speed.FromMetresPerSecond(UpdraftMs(Guard.Finite(distanceM, 0)));

    internal double UpdraftMs(double distanceM)
    {
        if (!_inside)
            return 0;

        var radii = distanceM / RadiusM;
        var updraft = _shape.At(radii) * CentreUpdraftMs;
        if (radii > CoreRatio && radii < 2)
            updraft += Math.Min(0, RingFactor * (Math.PI / 6) * Math.Sin(Math.PI * radii)) * MeanUpdraftMs;
        return radii > CoreRatio && CentreUpdraftMs > 0
            ? updraft + (Outside(radii) * SurroundingSinkMs * (1 - (updraft / CentreUpdraftMs)))
            : updraft;
    }

    /// <summary>How far the surroundings are mixed in: at once at the edge of the core as printed, over a fifth of the radius where nothing may jump.</summary>
    private double Outside(double radii) => _smooth ? Math.Min(1, (radii - CoreRatio) / MixedOver) : 1;

    /// <summary>Equation 11.</summary>
    internal static double MeanUpdraft(double wStarMs, double heightFraction) =>
        AllenProfile.MeanMs(wStarMs, heightFraction, Math.Cbrt(heightFraction));

    /// <summary>Equation 12, times the gain by which the day's updraft is wider than the paper's.</summary>
    internal static double Radius(double depthM, double heightFraction, double gain, double least = 10) =>
        AllenProfile.RadiusM(depthM, heightFraction, Math.Cbrt(heightFraction), gain, least);

    /// <summary>Centre over mean updraft, equations 14 and 15.</summary>
    internal static double CoreFactor(double coreRatio) => 3 / AllenProfile.Fullness(coreRatio);

    private static double Ring(double fraction) => fraction is > 0.5 and <= 0.9 ? 2.5 * (fraction - 0.5) : 0;

    /// <summary>Equation 21; updrafts over more than half of the area, which the paper's layers never have, are held to half.</summary>
    private static double Surrounding(double mean, double ring, double covered)
    {
        var share = Math.Min(covered, 0.5);
        return Math.Min(0, -share * mean * (1 - ring) / (1 - share));
    }
}
