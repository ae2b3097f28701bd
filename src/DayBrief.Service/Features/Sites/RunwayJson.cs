using DayBrief.Days;
using DayBrief.Service.Infrastructure;
using DayBrief.Texts;

namespace DayBrief.Service.Features.Sites;

/// <summary>One direction of a runway as the outside contract names it. Either heading will do where the site states its
/// magnetic variation.</summary>
/// <param name="Designator">As painted.</param>
/// <param name="HeadingDeg">True direction of take-off.</param>
/// <param name="Surface">Such as grass.</param>
/// <param name="HeadingMagneticDeg">Magnetic direction of take-off.</param>
public sealed record RunwayJson(string? Designator, double? HeadingDeg, string? Surface = null, double? HeadingMagneticDeg = null)
{
    /// <summary>Rounding of published headings and variation that drifts: true and magnetic may disagree by this much.</summary>
    private const double AgreementDegrees = 3;

    internal static RunwayJson Of(Runway runway) =>
        new(runway.Designator, runway.HeadingDegrees, runway.Surface, runway.MagneticDegrees);

    internal Runway ToRunway(string field, double? variation, FieldErrors errors)
    {
        var given = errors.Optional($"{field}.headingDeg", HeadingDeg);
        var magnetic = errors.Optional($"{field}.headingMagneticDeg", HeadingMagneticDeg);
        var worked = magnetic is { } compass && variation is { } east ? MagneticHeading.ToTrue(compass, east) : (double?)null;
        if ((given ?? worked) is null)
        {
            errors.Add($"{field}.headingDeg", magnetic is null
                ? Words.Of($"Needs a number from {0} to {360}.")
                : Words.Of($"Needs the true heading, or the site's magnetic variation for the magnetic one."));
        }
        else if (given is { } heading && worked is { } other && Math.Abs(Math.IEEERemainder(heading - other, 360)) > AgreementDegrees)
        {
            errors.Add($"{field}.headingMagneticDeg", $"{heading}° true and {magnetic}° magnetic do not agree with a variation of {variation}°.");
        }

        errors.Length($"{field}.designator", Designator, 8);
        errors.Length($"{field}.surface", Surface, 60);
        return new(Designator ?? "?", given ?? worked ?? 0, Surface, magnetic);
    }
}
