using DayBrief.BoundaryLayer;
using DayBrief.Reports;

namespace DayBrief.Service.Features.Briefs;

/// <summary>Something that was given for a brief and that it is not computed from.</summary>
internal sealed record Unused(string What, string Why);

/// <summary>All that was given and is not used, with why: whoever signs reads it before he signs.</summary>
internal static class NotUsed
{
    public static IEnumerable<Unused> Of(MadeBrief made, Reader reader) =>
        Ascents(made.Inputs, reader).Concat(AboutTheAscent(made, reader)).Concat(Reports(made, reader)).Concat(Assumed(made.Inputs, reader)).Concat(LeftOut(made, reader));

    private static IEnumerable<Unused> Ascents(BriefInputs inputs, Reader reader) => (inputs.OtherAscents ?? []).Select(other => new Unused(
        other switch
        {
            { GivenAs: "pasted" } => Named(reader["the pasted text"], other, reader),
            { GivenAs: "typed" } => Named(reader["the typed levels"], other, reader),
            _ => Named(other.Name ?? reader["a file"], other, reader),
        },
        other.Why == OtherAscentJson.NotReadable ? reader["it cannot be read as an ascent"] : reader["another ascent is chosen"]));

    private static string Named(string how, OtherAscentJson other, Reader reader) => string.Join(", ", new[]
    {
        how,
        other.Station is { } station ? reader.Say($"Station {station}") : null,
        other.ValidAt is { } at ? $"{reader.Language.DateAndTime(at.ToUniversalTime())} UTC" : null,
    }.OfType<string>());

    /// <summary>What was entered about the ascent where it says so itself.</summary>
    private static IEnumerable<Unused> AboutTheAscent(MadeBrief made, Reader reader)
    {
        var (inputs, source) = (made.Inputs, made.Brief.Ascent.Sounding.Source);
        var itself = reader["the ascent says so itself"];
        if (inputs is { AscentLatitude: { } north, AscentLongitude: { } east } && source.Position is { } own
            && (Math.Abs(own.LatitudeDegrees - north) > 0.01 || Math.Abs(own.LongitudeDegrees - east) > 0.01))
            yield return new(reader["the place entered for the balloon"], itself);
        if (inputs.AscentElevationM is { } metres && source.Elevation is { } elevation && Math.Abs(elevation.Metres - metres) > 0.5)
            yield return new(reader.Say($"the elevation of {metres:0} m entered for the balloon"), itself);
        if (inputs.AscentValidAt is { } at && made.Brief.AscentValidAt != at)
            yield return new(reader.Say($"the time entered for the ascent, {at.UtcDateTime:HH:mm} UTC"), itself);
    }

    private static IEnumerable<Unused> Reports(MadeBrief made, Reader reader)
    {
        var brief = made.Brief;
        if (brief.Observation is { } observed && brief.Ascent.Sounding.Remarks.All(remark => remark.Code != "surface-corrected"))
        {
            yield return new(
                reader.Say($"temperature and dew point of the METAR {observed.Station} {observed.Time.Hour:00}:{observed.Time.Minute:00} UTC, for the lowest layer"),
                brief.AscentValidAt is null ? reader["the ascent's time is not known"]
                : observed.Temperature is null ? reader["the METAR gives none"]
                : reader["more than 90 minutes from the ascent"]);
        }

        if (brief.Forecast is { } forecast && (forecast.IsCancelled || forecast.IsNil))
            yield return new(reader.Say($"the TAF of {forecast.Station}"), reader["it is cancelled or empty"]);
        else if (brief.Forecast is { } other && IsAnotherDays(other, brief.Day.Sun))
            yield return new(reader.Say($"the TAF of {other.Station}"), reader["it is not valid while the sun is up on this day"]);
    }

    private static bool IsAnotherDays(AerodromeForecast forecast, SunDay sun) =>
        forecast.To?.NearestTo(sun.Noon) <= (sun.Sunrise ?? sun.Noon.AddHours(-12)) || forecast.From?.NearestTo(sun.Noon) >= (sun.Sunset ?? sun.Noon.AddHours(12));

    private static IEnumerable<Unused> Assumed(BriefInputs inputs, Reader reader)
    {
        var assumed = inputs.Assumptions;
        if (assumed is { CloudOktas: { } oktas, CloudByHour.Count: > 0 })
            yield return new(reader.Say($"{oktas:0.#} oktas of cloud for the whole day"), reader["cloud by the hour is given"]);
        if (assumed is { MaxTemperatureC: { } max, MixedTemperatureC: not null })
            yield return new(reader.Say($"the highest temperature of {max:0.#} °C"), reader["the temperature of the mixed layer is given"]);
    }

    private static IEnumerable<Unused> LeftOut(MadeBrief made, Reader reader) => made.Brief.Ascent.Sounding.Remarks
        .Where(remark => remark.LeavesOut)
        .Select(remark => new Unused(reader["of the ascent"], reader.Say(remark.Words)));
}
