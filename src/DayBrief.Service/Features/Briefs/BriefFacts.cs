using DayBrief.Days;
using DayBrief.Soundings;
using DayBrief.Units;

namespace DayBrief.Service.Features.Briefs;

/// <summary>A small fact with its name.</summary>
internal sealed record Fact(string Name, string Value);

internal static class BriefFacts
{
    public static IEnumerable<Fact> Of(MadeBrief made, Reader reader)
    {
        var brief = made.Brief;
        var sun = brief.Day.Sun;
        string Time(DateTimeOffset? at) => at is { } known ? reader.Time(known) : reader["not known"];
        yield return sun switch
        {
            { IsPolarDay: true } => new(reader["Sun"], reader["does not set"]),
            { IsPolarNight: true } => new(reader["Sun"], reader["does not rise"]),
            _ => new(reader["Sun"], reader.Say($"rises {Time(sun.Sunrise)}, sets {Time(sun.Sunset)}; light until {Time(sun.CivilDusk)}")),
        };
        if (brief.Observation is { } observed)
            yield return new($"{observed.Station} {observed.Time.Hour:00}:{observed.Time.Minute:00} UTC", observed.Raw);
        if (brief.Forecast is { } forecast)
            yield return new($"TAF {forecast.Station}", forecast.Raw);
        foreach (var runway in Runways(brief, made.Inputs.RunwayInUse, reader))
            yield return runway;
        yield return new(reader["Freezing level"], brief.FreezingLevel is { } freezing ? reader.Height(freezing.Metres) : reader["not known"]);
        yield return new(reader["Cumulus if"], Convective(brief, reader));
        yield return new(reader["Maximum"], brief.MaxTemperature is { } max ? Reader.Temperature(max.Celsius) : reader["not known"]);
        yield return new(reader["Ascent at ground"], AtGround(brief.Ascent.Profile, reader));
        if (brief.DensityAltitude is { } density && density > brief.Site.Elevation)
            yield return new(reader["Density altitude"], reader.Say($"{reader.Height(density.Metres)} at the maximum"));
    }

    private static string AtGround(Profile profile, Reader reader)
    {
        var dewPoint = profile.SurfaceDewPoint is { } known
            ? reader.Say($"dew point {Reader.Temperature(known.Celsius)}")
            : reader["dew point not known"];
        return $"{profile.SurfacePressure.Hectopascals:0} hPa, {Reader.Temperature(profile.SurfaceTemperature.Celsius)}, {dewPoint}";
    }

    /// <summary>The morning's wind on each runway: the one in use first, then those into wind.</summary>
    private static IEnumerable<Fact> Runways(Brief brief, string? inUse, Reader reader)
    {
        if (brief.Site.Runways.Length == 0)
            yield break;
        if (brief.WindAt(Height.FromMetres(10)) is not { } wind)
        {
            yield return new(reader["Runways"], reader["wind not known"]);
            yield break;
        }

        foreach (var part in brief.Site.Runways.Select(runway => RunwayWind.Of(runway, wind))
            .Where(part => part.Along.Knots >= 0 || part.Runway.Designator == inUse)
            .OrderByDescending(part => part.Runway.Designator == inUse).ThenByDescending(part => part.Along))
        {
            yield return new(
                part.Runway.Designator == inUse ? reader.Say($"Runway {part.Runway.Designator}, in use") : reader.Say($"Runway {part.Runway.Designator}"),
                part.Along.Knots >= 0
                    ? reader.Say($"{reader.WindSpeed(part.Along)} head, {reader.WindSpeed(part.Across)} across")
                    : reader.Say($"{reader.WindSpeed(Speed.FromKnots(-part.Along.Knots))} tail, {reader.WindSpeed(part.Across)} across"));
        }
    }

    private static string Convective(Brief brief, Reader reader) => brief.Ascent.ConvectiveCondensation switch
    {
        { } ccl when ccl.ConvectiveTemperature < brief.Ascent.Profile.SurfaceTemperature =>
            reader["the morning's moisture stays: already warm enough"],
        { } ccl => reader.Say($"{Reader.Temperature(ccl.ConvectiveTemperature.Celsius)} with the morning's moisture, base {reader.Height(ccl.Height.Metres - brief.FieldAboveAscentM)}"),
        null => reader["not known"],
    };
}
