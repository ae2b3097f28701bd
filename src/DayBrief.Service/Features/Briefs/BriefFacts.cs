using DayBrief.Days;
using DayBrief.Soundings;

namespace DayBrief.Service.Features.Briefs;

/// <summary>A small fact with its name.</summary>
internal sealed record Fact(string Name, string Value);

internal static class BriefFacts
{
    /// <summary>All of them.</summary>
    public static IEnumerable<Fact> Of(MadeBrief made, Reader reader) =>
        [Sun(made.Brief, reader), .. Reports(made.Brief), .. RunwayWords.Of(made, reader), .. Air(made.Brief, reader)];

    /// <summary>What the launch point wants, the most wanted first: the runways where the hours do not tell them already. METAR and
    /// TAF have a place of their own.</summary>
    public static IEnumerable<Fact> OfTheSheet(MadeBrief made, Reader reader)
    {
        var hourly = HourTable.OfTheSheet(made, reader).Any(hour => hour.Runway != HourTable.Nothing);
        Fact[] sun = [Sun(made.Brief, reader)];
        return hourly
            ? [.. sun, .. RunwayWords.Of(made, reader), .. Air(made.Brief, reader)]
            : [.. RunwayWords.Of(made, reader), .. sun, .. Air(made.Brief, reader)];
    }

    /// <summary>METAR and TAF as they came.</summary>
    public static IEnumerable<Fact> Reports(Brief brief)
    {
        if (brief.Observation is { } observed)
            yield return new($"{observed.Station} {observed.Time.Hour:00}:{observed.Time.Minute:00} UTC", observed.Raw);
        if (brief.Forecast is { } forecast)
            yield return new($"TAF {forecast.Station}", forecast.Raw);
    }

    private static Fact Sun(Brief brief, Reader reader)
    {
        var sun = brief.Day.Sun;
        string Time(DateTimeOffset? at) => at is { } known ? reader.Time(known) : reader["not known"];
        return sun switch
        {
            { IsPolarDay: true } => new(reader["Sun"], reader["does not set"]),
            { IsPolarNight: true } => new(reader["Sun"], reader["does not rise"]),
            _ => new(reader["Sun"], reader.Say($"rises {Time(sun.Sunrise)}, sets {Time(sun.Sunset)}; light until {Time(sun.CivilDusk)}")),
        };
    }

    private static IEnumerable<Fact> Air(Brief brief, Reader reader)
    {
        yield return new(reader["Maximum"], brief.MaxTemperature is { } max ? Reader.Temperature(max.Celsius) : reader["not known"]);
        yield return new(reader["Freezing level"], brief.FreezingLevel is { } freezing ? reader.Height(freezing.Metres) : reader["not known"]);
        yield return new(reader["Cumulus if"], Convective(brief, reader));
        if (brief.DensityAltitude is { } density && density > brief.Site.Elevation)
            yield return new(reader["Density altitude"], reader.Say($"{reader.Height(density.Metres)} at the maximum"));
        yield return new(reader["Ascent at ground"], AtGround(brief.Ascent.Profile, reader));
    }

    private static string AtGround(Profile profile, Reader reader)
    {
        var dewPoint = profile.SurfaceDewPoint is { } known
            ? reader.Say($"dew point {Reader.Temperature(known.Celsius)}")
            : reader["dew point not known"];
        return $"{profile.SurfacePressure.Hectopascals:0} hPa, {Reader.Temperature(profile.SurfaceTemperature.Celsius)}, {dewPoint}";
    }

    private static string Convective(Brief brief, Reader reader) => brief.Ascent.ConvectiveCondensation switch
    {
        { } ccl when ccl.ConvectiveTemperature < brief.Ascent.Profile.SurfaceTemperature =>
            reader["the morning's moisture stays: already warm enough"],
        { } ccl => reader.Say($"{Reader.Temperature(ccl.ConvectiveTemperature.Celsius)} with the morning's moisture, base {reader.Height(ccl.Height.Metres - brief.FieldAboveAscentM)}"),
        null => reader["not known"],
    };
}
