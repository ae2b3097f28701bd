using DayBrief.Days;
using DayBrief.Units;

namespace DayBrief.Service.Features.Briefs;

/// <summary>A small fact with its name.</summary>
internal sealed record Fact(string Name, string Value);

internal static class BriefFacts
{
    private const string NotKnown = "not known";

    public static IEnumerable<Fact> Of(MadeBrief made, Reader reader)
    {
        var brief = made.Brief;
        var sun = brief.Day.Sun;
        string Time(DateTimeOffset? at) => at is { } known ? reader.Time(known) : NotKnown;
        yield return sun switch
        {
            { IsPolarDay: true } => new("Sun", "does not set"),
            { IsPolarNight: true } => new("Sun", "does not rise"),
            _ => new("Sun", $"rises {Time(sun.Sunrise)}, sets {Time(sun.Sunset)}; light until {Time(sun.CivilDusk)}"),
        };
        if (brief.Observation is { } observed)
            yield return new($"{observed.Station} {observed.Time.Hour:00}:{observed.Time.Minute:00} UTC", observed.Raw);
        if (brief.Forecast is { } forecast)
            yield return new($"TAF {forecast.Station}", forecast.Raw);
        foreach (var runway in Runways(brief, reader))
            yield return runway;
        yield return new("Freezing level", brief.FreezingLevel is { } freezing ? reader.Height(freezing.Metres) : NotKnown);
        yield return new("Cumulus if", Convective(brief, reader));
        yield return new("Maximum", brief.MaxTemperature is { } max ? Reader.Temperature(max.Celsius) : NotKnown);
        yield return new("Ascent at ground", $"{brief.Ascent.Profile.SurfacePressure.Hectopascals:0} hPa, {Reader.Temperature(brief.Ascent.Profile.SurfaceTemperature.Celsius)}"
            + (brief.Ascent.Profile.SurfaceDewPoint is { } dew ? $", dew point {Reader.Temperature(dew.Celsius)}" : ", dew point not known"));
        if (brief.DensityAltitude is { } density && density > brief.Site.Elevation)
            yield return new("Density altitude", $"{reader.Height(density.Metres)} at the maximum");
    }

    /// <summary>The morning's wind on each runway, the one most into wind first.</summary>
    private static IEnumerable<Fact> Runways(Brief brief, Reader reader)
    {
        if (brief.Site.Runways.Length == 0)
            yield break;
        if (brief.WindAt(Height.FromMetres(10)) is not { } wind)
        {
            yield return new("Runways", "wind not known");
            yield break;
        }

        foreach (var part in brief.Site.Runways.Select(runway => RunwayWind.Of(runway, wind)).Where(part => part.Along.Knots >= 0).OrderByDescending(part => part.Along))
            yield return new($"Runway {part.Runway.Designator}", $"{reader.WindSpeed(part.Along)} head, {reader.WindSpeed(part.Across)} across");
    }

    private static string Convective(Brief brief, Reader reader) => brief.Ascent.ConvectiveCondensation switch
    {
        { } ccl when ccl.ConvectiveTemperature < brief.Ascent.Profile.SurfaceTemperature =>
            "the morning's moisture stays: already warm enough",
        { } ccl => $"{Reader.Temperature(ccl.ConvectiveTemperature.Celsius)} with the morning's moisture, base {reader.Height(ccl.Height.Metres - brief.FieldAboveAscentM)}",
        null => NotKnown,
    };
}
