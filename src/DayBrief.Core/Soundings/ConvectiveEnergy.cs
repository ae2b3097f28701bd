using DayBrief.Units;

namespace DayBrief.Soundings;

/// <summary>Energy a lifted surface parcel gains above, and needs below, the level where it floats free.</summary>
/// <param name="CapeJkg">Convective available potential energy, J kg⁻¹.</param>
/// <param name="CinJkg">Convective inhibition, J kg⁻¹, not positive.</param>
public readonly record struct ConvectiveEnergy(double CapeJkg, double CinJkg)
{
    private const double StepLogPressure = 0.004;

    /// <summary>CAPE and CIN of the surface parcel.</summary>
    /// <remarks>[AMS] "convective available potential energy", "convective inhibition": R_d ∫ (T_vp − T_ve) d ln p from
    /// the level of free convection to the level of neutral buoyancy; what is negative below is the inhibition. Virtual
    /// temperatures, dry to the LCL, pseudoadiabatic above. Where the parcel floats free in several layers, the one with
    /// most energy counts: a thin one at the cloud base does not lift a cap. Null without a surface dew point.</remarks>
    public static ConvectiveEnergy? Of(Profile profile) =>
        profile.SurfaceDewPoint is { } dewPoint ? Of(profile, profile.SurfaceTemperature, dewPoint) : null;

    /// <summary>CAPE and CIN of a parcel that starts from the surface with another temperature and dew point.</summary>
    /// <remarks>As <see cref="Of(Profile)"/>.</remarks>
    public static ConvectiveEnergy Of(Profile profile, Temperature temperature, Temperature dewPoint)
    {
        var ascent = ParcelAscent.Of(profile, temperature, dewPoint, StepLogPressure);
        return ascent.MainFloatingLayer is { } layer
            ? new(Math.Max(0, ascent.Work(layer.From, ascent.NeutralIndex)), ascent.NegativeWork(0, layer.From))
            : new(0, 0);
    }
}
