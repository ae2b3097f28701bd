using DayBrief.Service.Infrastructure;
using DayBrief.Soundings;

namespace DayBrief.Service.Features.Soundings;

/// <summary>The analysis as the outside contract names it: SI, or the unit in the name.</summary>
internal sealed record AnalysisJson
{
    public required SourceJson Source { get; init; }

    public required IReadOnlyList<LevelJson> Levels { get; init; }

    public required IReadOnlyList<HeightWindJson> WindsByHeight { get; init; }

    public required IReadOnlyList<RemarkJson> Remarks { get; init; }

    public required SurfaceJson Surface { get; init; }

    public required SurfaceParcelJson SurfaceParcel { get; init; }

    public required MixedParcelJson? MixedParcel50 { get; init; }

    public required CondensationJson? ConvectiveCondensation { get; init; }

    public required IReadOnlyList<DryTopJson> DryTops { get; init; }

    public required IReadOnlyList<InversionJson> Inversions { get; init; }

    public required double? FreezingLevelM { get; init; }

    public required IReadOnlyList<double?> FreezingLevelsAglM { get; init; }

    public required double? PrecipitableWaterMm { get; init; }

    public required double? KIndex { get; init; }

    public required double? CapeJkg { get; init; }

    public required double? CinJkg { get; init; }

    public static AnalysisJson Of(SoundingAnalysis analysis)
    {
        var profile = analysis.Profile;
        return new()
        {
            Source = SourceJson.Of(analysis.Sounding.Source),
            Levels = [.. analysis.Sounding.Levels.Select(level => LevelJson.Of(level, profile))],
            WindsByHeight = [.. analysis.Sounding.WindsByHeight.Select(HeightWindJson.Of)],
            Remarks = [.. analysis.Sounding.Remarks.Select(RemarkJson.Of)],
            Surface = SurfaceJson.Of(profile),
            SurfaceParcel = SurfaceParcelJson.Of(analysis),
            MixedParcel50 = MixedParcelJson.Of(analysis.MixedParcel50),
            ConvectiveCondensation = CondensationJson.Of(analysis),
            DryTops = [.. analysis.DryTops.Select(DryTopJson.Of)],
            Inversions = [.. analysis.Inversions.Select(InversionJson.Of)],
            FreezingLevelM = analysis.FreezingLevel is { } lasting && profile.Elevation is { } ground
                ? Json.Rounded((ground + lasting).Metres, 1)
                : null,
            FreezingLevelsAglM = [.. analysis.FreezingLevels.Select(height => Json.Rounded(height.Metres, 1))],
            PrecipitableWaterMm = Json.Rounded(analysis.PrecipitableWaterMm, 2),
            KIndex = Json.Rounded(analysis.KIndex, 2),
            CapeJkg = Json.Rounded(analysis.Energy?.CapeJkg, 1),
            CinJkg = Json.Rounded(analysis.Energy?.CinJkg, 1),
        };
    }
}

internal sealed record SourceJson(string? Name, string Format, string? Station, DateTimeOffset? ValidAt, int? DayOfMonth, int? HourUtc)
{
    public static SourceJson Of(SoundingSource source) => new(
        source.Name, source.Format, source.Station, source.ValidAt, source.DayAndHour?.Day, source.DayAndHour?.Hour);
}

internal sealed record LevelJson(
    double PressureHpa,
    double? HeightM,
    double? ComputedHeightM,
    double? TemperatureC,
    double? DewPointC,
    double? WindDirectionDeg,
    double? WindSpeedKt)
{
    public static LevelJson Of(SoundingLevel level, Profile profile) => new(
        Math.Round(level.Pressure.Hectopascals, 2),
        Json.Rounded(level.Height?.Metres, 1),
        profile.Elevation is { } ground && profile.HeightAt(level.Pressure) is { } height
            ? Json.Rounded((ground + height).Metres, 1)
            : null,
        Json.Rounded(level.Temperature?.Celsius, 2),
        Json.Rounded(level.DewPoint?.Celsius, 2),
        Json.Rounded(level.Wind?.FromDegrees, 1),
        Json.Rounded(level.Wind?.Speed.Knots, 2));
}

internal sealed record HeightWindJson(double? HeightM, double? WindDirectionDeg, double? WindSpeedKt)
{
    public static HeightWindJson Of(HeightWind wind) => new(
        Json.Rounded(wind.Height.Metres, 1), Json.Rounded(wind.Wind.FromDegrees, 1), Json.Rounded(wind.Wind.Speed.Knots, 2));
}

internal sealed record RemarkJson(Severity Severity, string Code, string Message, double? Level, bool Asks)
{
    public static RemarkJson Of(Remark remark) =>
        new(remark.Severity, remark.Code, remark.Message, Json.Rounded(remark.Level?.Hectopascals, 2), remark.Asks);
}

internal sealed record InversionJson(double? BaseAglM, double? TopAglM, double? BasePressureHpa, double? TopPressureHpa, double? StrengthC)
{
    public static InversionJson Of(Inversion inversion) => new(
        Json.Rounded(inversion.Base.Metres, 1),
        Json.Rounded(inversion.Top.Metres, 1),
        Json.Rounded(inversion.BasePressure.Hectopascals, 2),
        Json.Rounded(inversion.TopPressure.Hectopascals, 2),
        Json.Rounded(inversion.Strength.Kelvins, 2));
}
