using DayBrief.BoundaryLayer;
using DayBrief.Units;

namespace DayBrief.Days;

/// <summary>The wind at the ground of one step: what the growing layer mixes down of the ascent's winds.</summary>
/// <param name="FromDegrees">True direction it blows from.</param>
/// <param name="Speed">Mean, 10 m above the ground.</param>
/// <param name="Gust">Its gusts of a few seconds.</param>
/// <remarks>Momentum is stirred as heat is: the layer has the mean vector of the winds up to its top, brought to 10 m by the
/// surface layer's profile (<see cref="SurfaceLayer"/>). Gusts stand <see cref="GustDeviations"/> standard deviations
/// [Panofsky1977] above the mean. Before and after the heating the ascent's lowest wind stays. What is not in the ascent (sea breeze, valley
/// wind, a changing pressure field) is not in it either.</remarks>
internal readonly record struct MixedWind(double FromDegrees, Speed Speed, Speed Gust)
{
    private const double HeightM = 10;

    // A gust of three seconds in ten minutes (common practice, no source).
    private const double GustDeviations = 2.5;

    /// <summary>Of a step; null when the ascent has no winds.</summary>
    public static MixedWind? At(DayFrame frame, DayTrack track, int i)
    {
        if (frame.WindsAt(i) is not { } winds)
            return null;
        if (!(track.WStar[i] > 0))
            return winds.At(Height.FromMetres(HeightM)) is { } still ? new(still.FromDegrees, still.Speed, still.Speed) : null;
        var (depth, wStar) = (track.DepthM[i], track.WStar[i]);
        var mixed = winds.Mean(Height.FromMetres(Math.Max(depth, HeightM)));
        var roughness = frame.Surface.RoughnessM;
        var heat = wStar * wStar * wStar * track.Theta[i] / (Thermodynamics.Air.Gravity * depth);
        var layer = SurfaceLayer.Of(heat, heat, track.Theta[i], depth, mixed.Speed.MetresPerSecond, roughness);
        var mean = layer.WindAtMs(HeightM, mixed.Speed.MetresPerSecond, wStar, roughness);
        var gust = mean + (GustDeviations * layer.GustDeviationMs(depth));
        return new(mixed.FromDegrees, Speed.FromMetresPerSecond(mean), Speed.FromMetresPerSecond(gust));
    }
}
