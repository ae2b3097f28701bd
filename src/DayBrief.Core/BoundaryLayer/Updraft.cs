using DayBrief.Units;

namespace DayBrief.BoundaryLayer;

/// <summary>The average thermal of a convective layer at one height.</summary>
/// <param name="MeanMs">Mean upward speed over its area.</param>
/// <param name="CentreMs">Speed in its centre.</param>
/// <param name="RadiusM">Outer radius.</param>
public readonly record struct Updraft(double MeanMs, double CentreMs, double RadiusM)
{
    /// <summary>Share of the layer at which the mean updraft ends.</summary>
    internal const double TopShare = 1 / 1.1;

    /// <summary>The average thermal.</summary>
    /// <remarks>[Allen2006] eqs. 11–15: w̄ = w* (z/z_i)^⅓ (1 − 1.1 z/z_i), r₂ = 0.102 (z/z_i)^⅓ (1 − 0.25 z/z_i) z_i, at
    /// least 10 m, centre 3 w̄/(1 + x + x²) with x = r₁/r₂ = 0.0011 r₂ + 0.14 (0.8 from 600 m). No updraft above
    /// 0.909 z_i.</remarks>
    /// <param name="height">Height above ground.</param>
    /// <param name="depth">Depth of the layer, z_i.</param>
    /// <param name="velocityScale">w*.</param>
    public static Updraft At(Height height, Height depth, Speed velocityScale)
    {
        Guard.Finite(depth.Metres, min: 1, name: nameof(depth));
        var share = Guard.Finite(height.Metres, min: 0, name: nameof(height)) / depth.Metres;
        return share > TopShare
            ? default
            : At(share, Math.Cbrt(share), depth.Metres, Guard.Finite(velocityScale.MetresPerSecond, min: 0));
    }

    internal static Updraft At(double share, double cubeRootOfShare, double depthM, double wStar)
    {
        var mean = wStar * cubeRootOfShare * Math.Max(0, 1 - (1.1 * share));
        var radius = Math.Max(10, 0.102 * cubeRootOfShare * (1 - (0.25 * share)) * depthM);
        var x = radius < 600 ? (0.0011 * radius) + 0.14 : 0.8;
        return new(mean, 3 * mean / (1 + x + (x * x)), radius);
    }
}
