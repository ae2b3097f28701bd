using DayBrief.Units;
using DayBrief.Updrafts;

namespace DayBrief.BoundaryLayer;

/// <summary>The average thermal of a convective layer at one height.</summary>
/// <param name="MeanMs">Mean upward speed over its area.</param>
/// <param name="CentreMs">Speed in its centre.</param>
/// <param name="RadiusM">Outer radius.</param>
public readonly record struct Updraft(double MeanMs, double CentreMs, double RadiusM)
{
    /// <summary>The average thermal.</summary>
    /// <remarks>[Allen2006] eqs. 11–15, see <see cref="AllenProfile"/>. No updraft above 0.909 z_i.</remarks>
    /// <param name="height">Height above ground.</param>
    /// <param name="depth">Depth of the layer, z_i.</param>
    /// <param name="velocityScale">w*.</param>
    public static Updraft At(Height height, Height depth, Speed velocityScale)
    {
        Guard.Finite(depth.Metres, min: 1, name: nameof(depth));
        var share = Guard.Finite(height.Metres, min: 0, name: nameof(height)) / depth.Metres;
        return share > AllenProfile.TopShare
            ? default
            : At(share, Math.Cbrt(share), depth.Metres, Guard.Finite(velocityScale.MetresPerSecond, min: 0));
    }

    internal static Updraft At(double share, double cubeRootOfShare, double depthM, double wStar)
    {
        var mean = Math.Max(0, AllenProfile.MeanMs(wStar, share, cubeRootOfShare));
        var radius = AllenProfile.RadiusM(depthM, share, cubeRootOfShare);
        return new(mean, 3 * mean / AllenProfile.Fullness(AllenProfile.CoreRatio(radius)), radius);
    }
}
