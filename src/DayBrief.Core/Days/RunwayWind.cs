using DayBrief.Units;

namespace DayBrief.Days;

/// <summary>The morning's wind at the ground along and across one runway direction.</summary>
/// <param name="Runway">The runway direction.</param>
/// <param name="Along">Head wind; negative is a tail wind.</param>
/// <param name="Across">Cross wind from either side.</param>
public readonly record struct RunwayWind(Runway Runway, Speed Along, Speed Across)
{
    /// <summary>The components on one runway.</summary>
    /// <remarks>[FAA-25] ch. 11: head wind U cos α, cross wind U sin α.</remarks>
    public static RunwayWind Of(Runway runway, Wind wind)
    {
        var angle = (wind.FromDegrees - runway.HeadingDegrees) * Math.PI / 180;
        var speed = wind.Speed.MetresPerSecond;
        return new(
            runway,
            Speed.FromMetresPerSecond(speed * Math.Cos(angle)),
            Speed.FromMetresPerSecond(Math.Abs(speed * Math.Sin(angle))));
    }

    /// <summary>The runway direction with the most head wind; null without runways or wind.</summary>
    public static RunwayWind? Best(Brief brief) =>
        brief.WindAt(Height.FromMetres(10)) is { } wind && brief.Site.Runways.Length > 0
            ? brief.Site.Runways.Select(runway => Of(runway, wind)).MaxBy(part => part.Along)
            : null;
}
