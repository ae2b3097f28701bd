using DayBrief.Units;
using DayBrief.Updrafts;

namespace DayBrief.Flight.Thermals;

/// <summary>The thermal of the day at one height, as a pilot would describe it: how strong, how wide, how deep, how long.</summary>
/// <remarks>
/// Mapping onto [Allen2006]: the core updraft is the updraft in the centre (equations 14 and 15) and the radius is the outer
/// radius r₂ (equation 12), both at <see cref="Height"/>; the depth is z_i. Equation 11 turned round gives the w* that such a
/// centre needs, which is above the layer's own because pilots choose the stronger updrafts; the radius gain is r₂ over the
/// paper's r₂ at that height. Both hold over the height, so the thermal weakens and widens upwards as the paper says. A core
/// said to carry above 0.8 of the depth overshoots: the profile's depth is then taken as height/0.8. A thermal that cumulus
/// carries on above the layer weakens over a deeper profile; strength and radius at the height stay as given.
/// </remarks>
public sealed class Thermal
{
    private const double HighestFraction = 0.8;

    /// <summary>A thermal of the given strength and size at one height.</summary>
    /// <param name="coreUpdraft">Updraft in the centre at the height, 0.1 to 20 m/s.</param>
    /// <param name="radiusM">Outer radius of the updraft at the height, 10 to 2000 m.</param>
    /// <param name="depth">Depth of the convective layer above the ground, 100 to 10 000 m.</param>
    /// <param name="height">Height above the ground for which strength and radius hold, 20 m to the depth.</param>
    /// <param name="lifetime">How long lift lasts at any one height, 1 minute or more; null for a lasting thermal.</param>
    /// <param name="windShearMsPerKm">Change of the wind with height, −30 to 30 m/s per km.</param>
    /// <param name="profileDepth">Depth over which it weakens, the layer's or more; null for the layer's.</param>
    /// <exception cref="ArgumentOutOfRangeException">An argument outside its range.</exception>
    public Thermal(Speed coreUpdraft, double radiusM, Height depth, Height height, TimeSpan? lifetime = null, double windShearMsPerKm = 0, Height? profileDepth = null)
    {
        Guard.Finite(coreUpdraft.MetresPerSecond, 0.1, 20, nameof(coreUpdraft));
        Guard.Finite(depth.Metres, 100, 10_000, nameof(depth));
        Guard.Finite(height.Metres, 20, depth.Metres, nameof(height));
        if (lifetime is { } life)
            Guard.Finite(life.TotalSeconds, 60, name: nameof(lifetime));
        (CoreUpdraft, Depth, Height, Lifetime) = (coreUpdraft, depth, height, lifetime);
        RadiusM = Guard.Finite(radiusM, 10, 2000);
        WindShearMsPerKm = Guard.Finite(windShearMsPerKm, -30, 30);
        var profileM = Guard.Finite(profileDepth?.Metres ?? depth.Metres, depth.Metres, 40_000, nameof(profileDepth));
        ProfileDepthM = Math.Max(profileM, height.Metres / HighestFraction);
        var fraction = height.Metres / ProfileDepthM;
        RadiusGain = RadiusM / (0.102 * Math.Cbrt(fraction) * (1 - (0.25 * fraction)) * ProfileDepthM);
        MeanUpdraftMs = coreUpdraft.MetresPerSecond / AllenUpdraft.CoreFactor(AllenProfile.CoreRatio(RadiusM));
        WStarMs = MeanUpdraftMs / AllenUpdraft.MeanUpdraft(1, fraction);
    }

    /// <summary>Updraft in the centre at the height.</summary>
    public Speed CoreUpdraft { get; }

    /// <summary>Outer radius of the updraft at the height, m.</summary>
    public double RadiusM { get; }

    /// <summary>Depth of the convective layer above the ground.</summary>
    public Height Depth { get; }

    /// <summary>Height above the ground for which strength and radius hold.</summary>
    public Height Height { get; }

    /// <summary>How long lift lasts at any one height; null if it lasts.</summary>
    public TimeSpan? Lifetime { get; }

    /// <summary>Change of the wind with height, m/s per km.</summary>
    public double WindShearMsPerKm { get; }

    /// <summary>The w* that Allen's mean profile needs for this core, m/s.</summary>
    public double WStarMs { get; }

    /// <summary>Radius over the paper's radius at that height.</summary>
    public double RadiusGain { get; }

    /// <summary>Mean updraft over the disc at the height, m/s.</summary>
    public double MeanUpdraftMs { get; }

    /// <summary>Depth over which it weakens, m: that of the layer, or more where cumulus carries it on.</summary>
    public double ProfileDepthM { get; }

    /// <summary>The fully grown updraft at a height above the ground.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Height below 0 or not finite.</exception>
    public AllenUpdraft At(Height height) =>
        AllenUpdraft.At(WStarMs, ProfileDepthM, Guard.Finite(height.Metres, 0, name: nameof(height)), RadiusGain);

    /// <summary>The same thermal described at another height: same w*, same gain of radius.</summary>
    /// <remarks>Null where the profile carries no updraft of 0.1 m/s or more, so that there is nothing to describe.</remarks>
    /// <exception cref="ArgumentOutOfRangeException">Height outside 20 m to the depth.</exception>
    public Thermal? DescribedAt(Height height)
    {
        Guard.Finite(height.Metres, 20, Depth.Metres, nameof(height));
        var there = At(height);
        return there.CentreUpdraftMs < 0.1 || there.HeightFraction > HighestFraction
            ? null
            : new(Speed.FromMetresPerSecond(there.CentreUpdraftMs), there.RadiusM, Depth, height, Lifetime, WindShearMsPerKm, Height.FromMetres(ProfileDepthM));
    }
}
