using DayBrief.Days;
using DayBrief.Service.Infrastructure;

namespace DayBrief.Service.Features.Briefs;

/// <summary>The convective day as the outside contract names it.</summary>
internal sealed record DayJson
{
    public required string Site { get; init; }

    public required DateOnly Date { get; init; }

    public required AssumedJson Assumptions { get; init; }

    public required DateTimeOffset? Sunrise { get; init; }

    public required DateTimeOffset? Sunset { get; init; }

    public required IReadOnlyList<StepJson> Steps { get; init; }

    public required TriggerJson Trigger { get; init; }

    /// <summary>What a temperature asked for needs beyond sun and ground; null where none was asked for.</summary>
    public required AskedJson? MaximumAsked { get; init; }

    /// <summary>Pauses between the first and the last usable thermal.</summary>
    public required IReadOnlyList<WindowJson> Pauses { get; init; }

    public required DateTimeOffset? FirstUsable { get; init; }

    public required WindowJson? Best { get; init; }

    public required DateTimeOffset? Decline { get; init; }

    public required DateTimeOffset? Last { get; init; }

    public required double? MaxDepthM { get; init; }

    public required double? MaxUsableTopAglM { get; init; }

    public required double? MaxClimbMs { get; init; }

    public required ThermalTypeJson ThermalType { get; init; }

    public required CloudJson Cloud { get; init; }

    public required LayerWindJson? WindInLayer { get; init; }

    public required RangesJson? Ranges { get; init; }

    public required double? NoUsableThermalProbability { get; init; }

    public required IReadOnlyList<MattersJson> WhatMatters { get; init; }

    public required IReadOnlyList<CautionJson> Cautions { get; init; }

    public static DayJson Of(ConvectiveDay day) => new()
    {
        Site = day.Site.Id,
        Date = day.Date,
        Assumptions = AssumedJson.Of(day),
        Sunrise = day.Sun.Sunrise,
        Sunset = day.Sun.Sunset,
        Steps = [.. day.Steps.Select((step, i) => StepJson.Of(step, day.DepthBand.IsEmpty ? null : day.DepthBand[i]))],
        Trigger = new(Json.Rounded(day.Times.TriggerTemperature?.Celsius, 2), day.Times.TriggerTime),
        MaximumAsked = AskedJson.Of(day.Temperatures),
        Pauses = [.. day.Times.Pauses.Select(pause => new WindowJson(pause.From, pause.To))],
        FirstUsable = day.Times.FirstUsable,
        Best = day.Times.BestFrom is { } from && day.Times.BestTo is { } to ? new(from, to) : null,
        Decline = day.Times.Decline,
        Last = day.Times.Last,
        MaxDepthM = Json.Rounded(day.MaxDepth?.Metres, 1),
        MaxUsableTopAglM = Json.Rounded(day.MaxUsableTop?.Metres, 1),
        MaxClimbMs = Json.Rounded(day.MaxClimb?.MetresPerSecond, 3),
        ThermalType = ThermalTypeJson.Of(day.ThermalType, day.Site.Units),
        Cloud = CloudJson.Of(day.Cloud, day.Site.Units),
        WindInLayer = LayerWindJson.Of(day.Wind, day.Site.Units),
        Ranges = RangesJson.Of(day.Ranges),
        NoUsableThermalProbability = Json.Rounded(day.NoUsableThermalProbability, 3),
        WhatMatters = [.. day.WhatMatters.Select(matters => new MattersJson(matters.Input, Json.Rounded(matters.Share, 3), Json.Rounded(matters.DepthM, 1), matters.Words.In(day.Site.Units)))],
        Cautions = [.. day.Cautions.Select(caution => new CautionJson(caution.Code, caution.Text.In(day.Site.Units)))],
    };
}

internal sealed record AskedJson(double AskedC, double? SunAndGroundC, double? ReachedC, double? HeatFactor, double? FromOtherAirK)
{
    public static AskedJson? Of(TemperatureCheck? check) => check is null ? null : new(
        check.Asked.Celsius,
        Json.Rounded(check.EnergyBalance?.Celsius, 2),
        Json.Rounded(check.Reached?.Celsius, 2),
        Json.Rounded(check.HeatFactor, 3),
        Json.Rounded(check.FromOtherAirK, 2));
}

internal sealed record CautionJson(string Code, string Text);

internal sealed record TriggerJson(double? TemperatureC, DateTimeOffset? Time);

internal sealed record WindowJson(DateTimeOffset From, DateTimeOffset To);

internal sealed record MattersJson(string Input, double? Share, double? DepthM, string Words);

internal sealed record AssumedJson(
    double? MaxTemperatureC,
    double? MixedTemperatureC,
    double CloudOktas,
    IReadOnlyList<CloudFromJson> CloudByHour,
    IReadOnlyList<WindFromJson> WindByHour,
    double? QnhHpa,
    bool PrescribedFlux,
    double Entrainment,
    double? DivergencePerSecond,
    double? SinkingPerS,
    double? CoolingKPerH,
    TimeOnly? MaximumAt,
    bool WithoutCumulus,
    int Ensemble,
    int Seed,
    string GroundCover,
    string GroundWetness)
{
    public static AssumedJson Of(ConvectiveDay day) => new(
        Json.Rounded(day.Assumptions.MaxTemperature?.Celsius, 2),
        Json.Rounded(day.Assumptions.MixedTemperature?.Celsius, 2),
        day.Assumptions.CloudOktas,
        [.. day.Assumptions.CloudByHour.Select(CloudFromJson.Of)],
        [.. day.Assumptions.WindByHour.Select(WindFromJson.Of)],
        Json.Rounded(day.Assumptions.Qnh?.Hectopascals, 1),
        day.Assumptions.Flux is not null,
        day.Assumptions.EntrainmentRatio ?? DayAssumptions.UsualEntrainmentRatio,
        day.Assumptions.DivergencePerSecond,
        day.Assumptions.DivergencePerSecond,
        day.Assumptions.CoolingKelvinsPerHour,
        day.Assumptions.MaximumAt,
        day.Assumptions.WithoutCumulus,
        day.Assumptions.EnsembleSize,
        day.Assumptions.Seed,
        Choice.NameOf(day.Site.GroundCover),
        Choice.NameOf(day.Site.GroundWetness));
}
