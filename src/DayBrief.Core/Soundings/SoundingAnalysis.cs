using System.Collections.Immutable;
using DayBrief.Thermodynamics;
using DayBrief.Units;

namespace DayBrief.Soundings;

/// <summary>Everything that one ascent tells by itself, before any assumption about the day.</summary>
public sealed record SoundingAnalysis
{
    /// <summary>The ascent.</summary>
    public required Sounding Sounding { get; init; }

    /// <summary>Its column.</summary>
    public required Profile Profile { get; init; }

    /// <summary>LCL of the surface air; null without a surface dew point.</summary>
    public LiftedCondensation? SurfaceCondensation { get; init; }

    /// <summary>The stirred lowest 50 hPa; null where moisture is missing in it.</summary>
    public MixedParcel? MixedParcel50 { get; init; }

    /// <summary>CCL of the surface air.</summary>
    public ConvectiveCondensation? ConvectiveCondensation { get; init; }

    /// <summary>Dry tops of the surface temperatures asked for.</summary>
    public ImmutableArray<DryTopAt> DryTops { get; init; } = [];

    /// <summary>Crossings of 0 °C above the surface level.</summary>
    public ImmutableArray<Height> FreezingLevels { get; init; } = [];

    /// <summary>The height above which it stays below 0 °C; null where the ascent ends above 0 °C.</summary>
    public Height? FreezingLevel { get; init; }

    /// <summary>Inversions from the ground up.</summary>
    public ImmutableArray<Inversion> Inversions { get; init; } = [];

    /// <summary>Precipitable water, mm.</summary>
    public double? PrecipitableWaterMm { get; init; }

    /// <summary>K index, °C.</summary>
    public double? KIndex { get; init; }

    /// <summary>CAPE and CIN of the surface parcel.</summary>
    public ConvectiveEnergy? Energy { get; init; }

    /// <summary>Analyses an ascent.</summary>
    /// <param name="sounding">The ascent.</param>
    /// <param name="surfaceTemperatures">Surface temperatures whose dry tops are wanted.</param>
    /// <param name="elevation">Height of its surface level, where better known than by the ascent.</param>
    public static SoundingAnalysis Of(
        Sounding sounding, IEnumerable<Temperature>? surfaceTemperatures = null, Altitude? elevation = null)
    {
        var profile = Profile.Of(sounding, elevation);
        return new()
        {
            Sounding = sounding,
            Profile = profile,
            SurfaceCondensation = profile.SurfaceDewPoint is { } dewPoint
                ? LiftedCondensation.Of(profile.SurfacePressure, profile.SurfaceTemperature, dewPoint)
                : null,
            MixedParcel50 = MixedParcel.Of(profile, 50),
            ConvectiveCondensation = Soundings.ConvectiveCondensation.Of(profile),
            DryTops = [.. (surfaceTemperatures ?? []).Select(temperature => DryTopAt.Of(profile, temperature))],
            FreezingLevels = [.. Soundings.FreezingLevels.Of(profile)],
            FreezingLevel = Soundings.FreezingLevels.Lasting(profile),
            Inversions = [.. Inversion.Of(profile)],
            PrecipitableWaterMm = PrecipitableWater.MillimetresOf(profile),
            KIndex = Soundings.KIndex.Of(profile),
            Energy = ConvectiveEnergy.Of(profile),
        };
    }
}

/// <summary>What one surface temperature would bring.</summary>
/// <param name="SurfaceTemperature">The surface temperature.</param>
/// <param name="Top">Dry top; null when above the ascent.</param>
/// <param name="ThermalIndex850">Thermal index at 850 hPa; null outside the ascent.</param>
/// <param name="ThermalIndex700">Thermal index at 700 hPa; null outside the ascent.</param>
public readonly record struct DryTopAt(
    Temperature SurfaceTemperature,
    DryTop? Top,
    TemperatureDifference? ThermalIndex850,
    TemperatureDifference? ThermalIndex700)
{
    internal static DryTopAt Of(Profile profile, Temperature temperature) => new(
        temperature,
        DryTop.From(profile, temperature),
        DryTop.ThermalIndex(profile, temperature, Pressure.FromHectopascals(850)),
        DryTop.ThermalIndex(profile, temperature, Pressure.FromHectopascals(700)));
}
