using DayBrief.BoundaryLayer;
using DayBrief.Flight.Thermals;
using DayBrief.Numerics;
using DayBrief.Units;

namespace DayBrief.Days;

/// <summary>The thermal of the day as the flight computations take it: the one a pilot picks at the strongest time.</summary>
public static class DayThermal
{
    /// <summary>Lift at one height lasts this long in a lasting thermal: positions are drawn anew about every 20 minutes
    /// in [Allen2006].</summary>
    public static readonly TimeSpan Lasting = TimeSpan.FromMinutes(20);

    /// <summary>The height for which it is described, as a share of the depth: where Allen's size is quoted [Allen2006].</summary>
    private const double DescribedAt = 0.4;

    /// <summary>The thermal at the day's strongest time; null when the day has no usable thermals.</summary>
    /// <remarks>Strength and radius are those of the picked thermal, as the day's climb takes it (<see cref="Climb"/>). A short-lived one is given one turnover z_i/w* of the
    /// layer, in which its air has risen once from the ground to the top (common practice, no source). One that carries above
    /// the layer, to cumulus, weakens over so deep a profile that w* is left in its core at the usable top, as in <see cref="Climb"/>.</remarks>
    public static Thermal? Of(ConvectiveDay day) => StrongestStep(day) is { } strongest ? Of(day, strongest) : null;

    /// <summary>The same for the step that <see cref="StrongestStep"/> has found.</summary>
    /// <exception cref="ArgumentException">A step without thermals.</exception>
    public static Thermal Of(ConvectiveDay day, DayStep step)
    {
        ArgumentNullException.ThrowIfNull(day);
        if (step is not { MixedLayerDepthM: { } depth, CoreUpdraftMs: { } core, ThermalRadiusM: { } radius })
            throw new ArgumentException("The step has no thermals.", nameof(step));
        var turnover = step.ConvectiveVelocityScaleMs is > 0 and { } velocity
            ? TimeSpan.FromSeconds(Math.Clamp(depth / velocity, 180, 1800))
            : Lasting;
        Thermal Over(double profileM) => new(
            Speed.FromMetresPerSecond(Math.Min(core, 20)),
            Math.Clamp(Climb.PickedWidth * radius, Climb.LeastRadiusM, 2000),
            Height.FromMetres(Math.Clamp(depth, 100, 10_000)),
            Height.FromMetres(DescribedAt * Math.Clamp(depth, 100, 10_000)),
            day.ThermalType.Kind == ThermalKind.ShortLived ? turnover : Lasting,
            Math.Clamp(day.Wind?.ShearMsPerKm ?? 0, -30, 30),
            Height.FromMetres(profileM));
        return Carried(Over, Math.Clamp(depth, 100, 10_000), step);
    }

    /// <summary>The step at which a picked thermal climbs best; null when the day has no usable thermals.</summary>
    public static DayStep? StrongestStep(ConvectiveDay day)
    {
        ArgumentNullException.ThrowIfNull(day);
        return day.Steps
            .Where(step => step is { UsableTopAglM: not null, CoreUpdraftMs: > 0.1, ThermalRadiusM: not null, MixedLayerDepthM: not null })
            .MaxBy(step => step.ClimbMs);
    }

    /// <summary>The profile that leaves w* in the core at the usable top; the layer's own where thermals end in the layer.</summary>
    private static Thermal Carried(Func<double, Thermal> over, double depthM, DayStep step)
    {
        if (step is not { UsableTopAglM: { } top, ConvectiveVelocityScaleMs: { } wStar } || top <= depthM)
            return over(depthM);
        return over(Root.Between(profileM => over(profileM).At(Height.FromMetres(top)).CentreUpdraftMs - wStar, depthM, 4 * depthM));
    }
}
