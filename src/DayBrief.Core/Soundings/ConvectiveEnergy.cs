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
    /// the level of free convection to the level of neutral buoyancy, and below it; virtual temperatures, reversible
    /// ascent to the LCL, pseudoadiabatic above. Null without a surface dew point.</remarks>
    public static ConvectiveEnergy? Of(Profile profile) =>
        profile.SurfaceDewPoint is { } dewPoint ? Of(profile, profile.SurfaceTemperature, dewPoint) : null;

    /// <summary>CAPE and CIN of a parcel that starts from the surface with another temperature and dew point.</summary>
    public static ConvectiveEnergy Of(Profile profile, Temperature temperature, Temperature dewPoint)
    {
        var ascent = ParcelAscent.Of(profile, temperature, dewPoint, StepLogPressure);
        var free = ascent.FreeConvectionIndex;
        if (free is null)
            return new(0, 0);
        var neutral = ascent.NeutralIndex;
        var cape = ascent.Work(free.Value, neutral);
        return new(Math.Max(0, cape), Math.Min(0, ascent.Work(0, free.Value)));
    }
}
