using DayBrief.Days;
using DayBrief.Service.Infrastructure;

namespace DayBrief.Service.Features.Briefs;

internal sealed record ThermalTypeJson(
    string Kind, double? ChancePct, bool Leaning, bool InStreets, bool CappedLow, IReadOnlyList<string> Reasons, IReadOnlyList<CriterionJson> Criteria)
{
    public static ThermalTypeJson Of(ThermalType type, SiteUnits units) => new(
        type.Name,
        Json.Rounded(type.ChancePercent, 0),
        type.Leaning,
        type.InStreets,
        type.CappedLow,
        [.. type.Reasons.Select(reason => reason.In(units))],
        [.. type.Criteria.Select(criterion => new CriterionJson(criterion.Name, Json.Rounded(criterion.Value, 3), Choice.NameOf(criterion.Kind)))]);
}

internal sealed record CriterionJson(string Name, double? Value, string SpeaksFor);

internal sealed record CloudJson(
    bool Known,
    bool Dry,
    DateTimeOffset? First,
    double? FirstBaseAglM,
    double? BaseAglM,
    double? TopAglM,
    double? MaxCoverOktas,
    bool SpreadOut,
    DateTimeOffset? Overdevelopment,
    DateTimeOffset? Showers,
    DateTimeOffset? Thunder,
    double? BroadestTopAglM,
    LowCloudJson? Low,
    IReadOnlyList<string> Reasons)
{
    public static CloudJson Of(CloudOutlook cloud, SiteUnits units) => new(
        !cloud.Unknown,
        cloud.Dry,
        cloud.First,
        Json.Rounded(cloud.FirstBase?.Metres, 1),
        Json.Rounded(cloud.Base?.Metres, 1),
        Json.Rounded(cloud.Top?.Metres, 1),
        Json.Rounded(cloud.MaxCoverOktas, 2),
        cloud.SpreadOut,
        cloud.Overdevelopment,
        cloud.Showers,
        cloud.Thunder,
        Json.Rounded(cloud.BroadestTop?.Metres, 1),
        LowCloudJson.Of(cloud.Low),
        [.. cloud.Reasons.Select(reason => reason.In(units))]);
}

/// <summary>Fog or low stratus before the sun has stirred the air.</summary>
internal sealed record LowCloudJson(string Kind, double? BaseAglM, DateTimeOffset From, DateTimeOffset? Clears)
{
    public static LowCloudJson? Of(LowCloudOutlook? low) =>
        low is null ? null : new(low.IsFog ? "fog" : "low-stratus", Json.Rounded(low.Base.Metres, 0), low.From, low.Clears);
}

internal sealed record LayerWindJson(
    double? MeanDirectionDeg,
    double? MeanSpeedKt,
    double? ShearMsPerKm,
    double? FrictionVelocityMs,
    double? InstabilityRatio,
    bool StreetsLikely,
    double? StreetSpacingM,
    double? LeanDeg,
    bool TooMuch,
    bool WaveHint,
    IReadOnlyList<string> Reasons)
{
    public static LayerWindJson? Of(WindInLayer? wind, SiteUnits units) => wind is null
        ? null
        : new(
            Json.Rounded(wind.Mean.FromDegrees, 0),
            Json.Rounded(wind.Mean.Speed.Knots, 1),
            Json.Rounded(wind.ShearMsPerKm, 2),
            Json.Rounded(wind.FrictionVelocityMs, 3),
            Json.Rounded(wind.InstabilityRatio, 1),
            wind.StreetsLikely,
            Json.Rounded(wind.StreetSpacing?.Metres, 0),
            Json.Rounded(wind.LeanDegrees, 0),
            wind.TooMuch,
            wind.WaveHint,
            [.. wind.Reasons.Select(reason => reason.In(units))]);
}

internal sealed record RangeJson<T>(T? P10, T? P50, T? P90)
    where T : struct
{
    public static RangeJson<T> Of(DayRange<T> range) => new(range.P10, range.P50, range.P90);
}

internal sealed record RangesJson
{
    public required RangeJson<DateTimeOffset> TriggerTime { get; init; }

    public required RangeJson<double> TriggerTemperatureC { get; init; }

    public required RangeJson<DateTimeOffset> FirstUsable { get; init; }

    public required RangeJson<DateTimeOffset> Last { get; init; }

    public required RangeJson<double> MaxDepthM { get; init; }

    public required RangeJson<double> MaxUsableTopAglM { get; init; }

    public required RangeJson<double> MaxClimbMs { get; init; }

    public required RangeJson<DateTimeOffset> FirstCloud { get; init; }

    public required RangeJson<double> FirstCloudBaseAglM { get; init; }

    public static RangesJson? Of(DayRanges? ranges) => ranges is null
        ? null
        : new()
        {
            TriggerTime = RangeJson<DateTimeOffset>.Of(ranges.TriggerTime),
            TriggerTemperatureC = Rounded(ranges.TriggerTemperatureC, 2),
            FirstUsable = RangeJson<DateTimeOffset>.Of(ranges.FirstUsable),
            Last = RangeJson<DateTimeOffset>.Of(ranges.Last),
            MaxDepthM = Rounded(ranges.MaxDepthM, 1),
            MaxUsableTopAglM = Rounded(ranges.MaxUsableTopM, 1),
            MaxClimbMs = Rounded(ranges.MaxClimbMs, 3),
            FirstCloud = RangeJson<DateTimeOffset>.Of(ranges.FirstCloud),
            FirstCloudBaseAglM = Rounded(ranges.FirstCloudBaseM, 1),
        };

    private static RangeJson<double> Rounded(DayRange<double> range, int decimals) =>
        new(Json.Rounded(range.P10, decimals), Json.Rounded(range.P50, decimals), Json.Rounded(range.P90, decimals));
}
