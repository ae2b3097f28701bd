using DayBrief.Days;
using DayBrief.Service.Infrastructure;

namespace DayBrief.Service.Features.Briefs;

/// <summary>Five minutes of the day as the outside contract names them.</summary>
internal sealed record StepJson(
    DateTimeOffset Time,
    double? SurfaceTemperatureC,
    double? SensibleHeatWm2,
    double? LatentHeatWm2,
    double? MixedLayerDepthM,
    double? MixedLayerThetaK,
    double? MixedLayerMixingRatioGkg,
    double? ConvectiveVelocityScaleMs,
    double? CondensationLevelAglM,
    double? CloudBaseAglM,
    double? CloudTopAglM,
    double? CloudCoverOktas,
    double? ThermalTopAglM,
    double? UsableTopAglM,
    double? CoreUpdraftMs,
    double? ClimbMs,
    double? ThermalRadiusM,
    double? SpacingM,
    PickedJson? Picked,
    RangeJson<double>? MixedLayerDepthRangeM,
    double? SurfaceWindDirectionDeg,
    double? SurfaceWindKt,
    double? GustKt)
{
    public static StepJson Of(DayStep step, DayRange<double>? depth) => new(
        step.Time,
        Json.Rounded(step.SurfaceTemperatureC, 2),
        Json.Rounded(step.SensibleHeatWm2, 1),
        Json.Rounded(step.LatentHeatWm2, 1),
        Json.Rounded(step.MixedLayerDepthM, 1),
        Json.Rounded(step.MixedLayerThetaK, 3),
        Json.Rounded(step.MixedLayerMixingRatioGkg, 4),
        Json.Rounded(step.ConvectiveVelocityScaleMs, 4),
        Json.Rounded(step.CondensationLevelAglM, 1),
        Json.Rounded(step.CloudBaseAglM, 1),
        Json.Rounded(step.CloudTopAglM, 1),
        Json.Rounded(step.CloudCoverOktas, 2),
        Json.Rounded(step.ThermalTopAglM, 1),
        Json.Rounded(step.UsableTopAglM, 1),
        Json.Rounded(step.AverageCoreUpdraftMs, 3),
        Json.Rounded(step.ClimbMs, 3),
        Json.Rounded(step.ThermalRadiusM, 1),
        Json.Rounded(step.SpacingM, 1),
        step.CoreUpdraftMs is null ? null : new(Json.Rounded(step.CoreUpdraftMs, 3), Json.Rounded(step.PickedRadiusM, 1)),
        depth is { } range ? new(Json.Rounded(range.P10, 1), Json.Rounded(range.P50, 1), Json.Rounded(range.P90, 1)) : null,
        Json.Rounded(step.SurfaceWindFromDegrees, 0),
        Json.Rounded(step.SurfaceWindKt, 1),
        Json.Rounded(step.GustKt, 1));
}

/// <summary>The thermal that a pilot picks and stays in.</summary>
internal sealed record PickedJson(double? CoreUpdraftMs, double? RadiusM);
