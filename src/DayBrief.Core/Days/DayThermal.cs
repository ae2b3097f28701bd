using DayBrief.Flight.Thermals;
using DayBrief.Units;
using DayBrief.Updrafts;

namespace DayBrief.Days;

/// <summary>The thermal of the day as the flight computations take it: the one a pilot picks at the strongest time.</summary>
public static class DayThermal
{
    /// <summary>Lift at one height lasts this long in a lasting thermal: positions are drawn anew about every 20 minutes
    /// in [Allen2006].</summary>
    public static readonly TimeSpan Lasting = TimeSpan.FromMinutes(20);

    /// <summary>The thermal at the day's strongest time; null when the day has no usable thermals.</summary>
    /// <remarks>The picked thermal of that step's layer (<see cref="PickedUpdraft"/>), core and radius from the one function. A short-lived one
    /// is given one turnover z_i/w* of the layer, in which its air has risen once from the ground to the top (common practice, no source).</remarks>
    public static Thermal? Of(ConvectiveDay day) => StrongestStep(day) is { } strongest ? Of(day, strongest) : null;

    /// <summary>The same for the step that <see cref="StrongestStep"/> has found.</summary>
    /// <exception cref="ArgumentException">A step without thermals.</exception>
    public static Thermal Of(ConvectiveDay day, DayStep step)
    {
        ArgumentNullException.ThrowIfNull(day);
        if (step is not { MixedLayerDepthM: { } deep, ConvectiveVelocityScaleMs: { } wStar })
            throw new ArgumentException("The step has no thermals.", nameof(step));
        var depth = Height.FromMetres(Math.Clamp(deep, 100, 10_000));
        var turnover = wStar > 0 ? TimeSpan.FromSeconds(Math.Clamp(deep / wStar, 180, 1800)) : Lasting;
        var cloud = step is { CarriesToCloud: true, CloudBaseAglM: { } cloudBase } ? Height.FromMetres(cloudBase) : (Height?)null;
        var described = Height.FromMetres(PickedUpdraft.QuotedAt * depth.Metres);
        var there = PickedUpdraft.At(Speed.FromMetresPerSecond(wStar), depth, described, cloud);
        return new(
            Speed.FromMetresPerSecond(Math.Clamp(there.CoreMs, 0.1, 20)),
            Math.Clamp(there.RadiusM, 10, 2000),
            depth,
            described,
            day.ThermalType.Kind == ThermalKind.ShortLived ? turnover : Lasting,
            Math.Clamp(day.Wind?.ShearMsPerKm ?? 0, -30, 30),
            ThermalForm.Picked,
            cloud,
            cloud is null ? 0 : PickedUpdraft.CarriedThroughBase);
    }

    /// <summary>The step at which a picked thermal climbs best; null when the day has no usable thermals.</summary>
    public static DayStep? StrongestStep(ConvectiveDay day)
    {
        ArgumentNullException.ThrowIfNull(day);
        return day.Steps
            .Where(step => step is { UsableTopAglM: not null, ConvectiveVelocityScaleMs: > 0.1, MixedLayerDepthM: not null })
            .MaxBy(step => step.ClimbMs);
    }
}
