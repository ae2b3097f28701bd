using DayBrief.Service.Infrastructure;
using DayBrief.Soundings;
using DayBrief.Thermodynamics;
using DayBrief.Units;

namespace DayBrief.Service.Features.Soundings;

internal sealed record SurfaceJson(
    double? PressureHpa,
    double? HeightM,
    double? TemperatureC,
    double? DewPointC,
    double? MixingRatioGkg,
    double? PotentialTemperatureK,
    double? VirtualTemperatureC)
{
    public static SurfaceJson Of(Profile profile)
    {
        var ratio = profile.SurfaceDewPoint is { } dewPoint ? Humidity.Of(dewPoint, profile.SurfacePressure) : (MixingRatio?)null;
        return new(
            Json.Rounded(profile.SurfacePressure.Hectopascals, 2),
            Json.Rounded(profile.Elevation?.Metres, 1),
            Json.Rounded(profile.SurfaceTemperature.Celsius, 2),
            Json.Rounded(profile.SurfaceDewPoint?.Celsius, 2),
            Json.Rounded(ratio?.GramsPerKilogram, 4),
            Json.Rounded(DryAdiabat.PotentialTemperature(profile.SurfaceTemperature, profile.SurfacePressure).Kelvins, 3),
            ratio is { } moist ? Json.Rounded(Humidity.Virtual(profile.SurfaceTemperature, moist).Celsius, 3) : null);
    }
}

internal sealed record SurfaceParcelJson(double? LclPressureHpa, double? LclTemperatureC, double? LclHeightAglM)
{
    public static SurfaceParcelJson Of(SoundingAnalysis analysis) => new(
        Json.Rounded(analysis.SurfaceCondensation?.Pressure.Hectopascals, 3),
        Json.Rounded(analysis.SurfaceCondensation?.Temperature.Celsius, 3),
        analysis.SurfaceCondensation is { } lcl ? Json.Rounded(analysis.Profile.HeightAt(lcl.Pressure)?.Metres, 1) : null);
}

internal sealed record MixedParcelJson(double? TemperatureC, double? DewPointC, double? LclPressureHpa, double? LclTemperatureC)
{
    public static MixedParcelJson? Of(MixedParcel? parcel) => parcel is { } mixed
        ? new(
            Json.Rounded(mixed.Temperature.Celsius, 3),
            Json.Rounded(mixed.DewPoint.Celsius, 3),
            Json.Rounded(mixed.Condensation.Pressure.Hectopascals, 3),
            Json.Rounded(mixed.Condensation.Temperature.Celsius, 3))
        : null;
}

internal sealed record CondensationJson(
    double? PressureHpa, double? TemperatureC, double? HeightAglM, double? ConvectiveTemperatureC, bool AlreadyExceeded)
{
    public static CondensationJson? Of(SoundingAnalysis analysis) => analysis.ConvectiveCondensation is { } ccl
        ? new(
            Json.Rounded(ccl.Pressure.Hectopascals, 3),
            Json.Rounded(ccl.Temperature.Celsius, 3),
            Json.Rounded(ccl.Height.Metres, 1),
            Json.Rounded(ccl.ConvectiveTemperature.Celsius, 3),
            ccl.ConvectiveTemperature < analysis.Profile.SurfaceTemperature)
        : null;
}

internal sealed record DryTopJson(
    double? SurfaceTemperatureC, double? TopPressureHpa, double? TopHeightAglM, double? ThermalIndex850C, double? ThermalIndex700C)
{
    public static DryTopJson Of(DryTopAt top) => new(
        Json.Rounded(top.SurfaceTemperature.Celsius, 3),
        Json.Rounded(top.Top?.Pressure.Hectopascals, 3),
        Json.Rounded(top.Top?.Height.Metres, 1),
        Json.Rounded(top.ThermalIndex850?.Kelvins, 3),
        Json.Rounded(top.ThermalIndex700?.Kelvins, 3));
}
