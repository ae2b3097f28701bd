namespace DayBrief.Updrafts;

/// <summary>Size and strength of the updraft of a convective layer at one height, as the day and the flight in it both need them.</summary>
/// <remarks>[Allen2006] equations 11 to 15. Heights as shares of the layer's depth, with their cube root beside them, which
/// loops over heights know beforehand; lengths in metres, speeds in m/s.</remarks>
internal static class AllenProfile
{
    /// <summary>Share of the layer at which the mean updraft ends.</summary>
    internal const double TopShare = 1 / 1.1;

    /// <summary>Equation 11, mean over the disc of the outer radius: w* x^⅓ (1 − 1.1 x); negative above <see cref="TopShare"/>.</summary>
    internal static double MeanMs(double wStarMs, double share, double cubeRootOfShare) => wStarMs * cubeRootOfShare * (1 - (1.1 * share));

    /// <summary>Equation 12, outer radius r₂ = 0.102 x^⅓ (1 − 0.25 x) z_i, at least 10 m; times the gain by which an updraft
    /// is wider than the paper's.</summary>
    internal static double RadiusM(double depthM, double share, double cubeRootOfShare, double gain = 1, double least = 10) =>
        Math.Max(least, gain * 0.102 * cubeRootOfShare * (1 - (0.25 * share)) * depthM);

    /// <summary>Equation 13, core over outer radius ρ = r₁/r₂.</summary>
    internal static double CoreRatio(double radiusM) => radiusM < 600 ? (0.0011 * radiusM) + 0.14 : 0.8;

    /// <summary>1 + ρ + ρ²: three times the mean over it is the updraft in the centre (equations 14 and 15, where it stands as
    /// 3(r₂³−r₂²r₁)/(r₂³−r₁³)).</summary>
    internal static double Fullness(double coreRatio) => 1 + coreRatio + (coreRatio * coreRatio);
}
