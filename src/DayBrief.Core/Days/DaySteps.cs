using System.Collections.Immutable;
using DayBrief.BoundaryLayer;
using DayBrief.Units;
using DayBrief.Updrafts;

namespace DayBrief.Days;

/// <summary>Turns the kernels' arrays into the steps that leave the core: what is not a number becomes null.</summary>
internal static class DaySteps
{
    private const double RadiusShare = 0.4;

    // Encounters per length of track 1.2/z_i [Allen2006].
    private const double EncountersPerDepth = 1.2;

    public static ImmutableArray<DayStep> Of(DayFrame frame, DayTrack track, Headline headline, double[] cloudTopM) =>
        [.. Enumerable.Range(0, frame.Times.Length).Select(i => Step(frame, track, headline, cloudTopM, i))];

    private static DayStep Step(DayFrame frame, DayTrack track, Headline headline, double[] cloudTopM, int i)
    {
        var depth = Known(track.DepthM[i]);
        var cloudy = track.CumulusCover[i] >= Headline.FirstCloudShare;
        var cloudBase = cloudy ? Known(track.LclM[i]) : null;
        var cumulus = double.IsFinite(track.CumulusCover[i]) ? Cumulus.Projected(track.CumulusCover[i]) : 0;
        var wind = i >= frame.FirstStep ? MixedWind.At(frame, track, i) : null;
        return new()
        {
            SurfaceWindFromDegrees = wind?.FromDegrees,
            SurfaceWindKt = wind?.Speed.Knots,
            GustKt = wind?.Gust.Knots,
            Time = frame.Times[i],
            SurfaceTemperatureC = Known(track.ScreenKelvins[i] - Temperature.ZeroCelsius),
            SensibleHeatWm2 = Known(track.SensibleWm2[i]),
            LatentHeatWm2 = Known(track.LatentWm2[i]),
            MixedLayerDepthM = depth,
            MixedLayerThetaK = Known(track.Theta[i]),
            MixedLayerMixingRatioGkg = Known(track.Q[i] * 1000),
            ConvectiveVelocityScaleMs = Known(track.WStar[i]),
            CondensationLevelAglM = Known(track.LclM[i]),
            CloudBaseAglM = cloudBase,
            CloudTopAglM = cloudy ? Known(cloudTopM[i]) : null,
            CloudCoverOktas = frame.Air.HasMoisture ? 8 * (1 - ((1 - frame.Cover[2 * i]) * (1 - cumulus))) : null,
            ThermalTopAglM = depth is { } top ? Math.Min(top, cloudBase ?? top) : null,
            UsableTopAglM = Known(headline.UsableTopM[i]),
            AverageCoreUpdraftMs = depth is { } layer ? Known(Updraft.At(RadiusShare, Math.Cbrt(RadiusShare), layer, track.WStar[i]).CentreMs) : null,
            PickedRadiusM = depth is { } wide ? PickedUpdraft.FullRadiusM(wide) : null,
            CoreUpdraftMs = Known(headline.CoreMs[i]),
            ClimbMs = Known(headline.ClimbMs[i]),
            ThermalRadiusM = depth is { } deep ? Updraft.At(RadiusShare, Math.Cbrt(RadiusShare), deep, 1).RadiusM : null,
            SpacingM = depth / EncountersPerDepth,
            InstabilityRatio = Known(track.DepthM[i] / -track.ObukhovM[i]),
        };
    }

    private static double? Known(double value) => double.IsFinite(value) ? value : null;
}
