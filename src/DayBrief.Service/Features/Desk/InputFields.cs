using System.Globalization;
using DayBrief.Days;
using DayBrief.Service.Features.Briefs;
using DayBrief.Service.Infrastructure;
using DayBrief.Units;

namespace DayBrief.Service.Features.Desk;

/// <summary>The desk's fields for inputs that were not typed there: what <see cref="DeskReading"/> reads back as the same.</summary>
internal static class InputFields
{
    public static DeskFields Of(BriefInputs inputs)
    {
        var values = new Dictionary<string, string>();
        Put("kept", inputs.SoundingId);
        Put("site", inputs.Site.Id);
        Put("date", inputs.Date.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture));
        Put("preparedBy", inputs.PreparedBy);
        Put("groundWetness", inputs.Site.GroundWetness);
        Put("instructorNote", inputs.InstructorNote);
        Put("noteBeforeSolo", inputs.Notes?.BeforeSolo);
        Put("noteLocalSolo", inputs.Notes?.LocalSolo);
        Put("noteCrossCountry", inputs.Notes?.CrossCountry);
        Put("dayLimits", inputs.DayLimits);
        Put("runway", inputs.RunwayInUse);
        Put("validUntil", Time(inputs.ValidUntil));
        Put("observation", inputs.Observation);
        Put("forecast", inputs.Forecast);
        Put("ascentIndex", inputs.AscentIndex?.ToString(CultureInfo.InvariantCulture));
        Put("ascentLatitude", Number(inputs.AscentLatitude));
        Put("ascentLongitude", Number(inputs.AscentLongitude));
        Put("ascentElevationM", Number(inputs.AscentElevationM));
        Put("ascentDate", inputs.AscentValidAt?.UtcDateTime.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture));
        Put("ascentTime", inputs.AscentValidAt?.UtcDateTime.ToString("HH:mm", CultureInfo.InvariantCulture));
        Put("ascentConfirmed", inputs.AscentConfirmed ? "yes" : null);
        Assumptions(inputs.Assumptions, Put);
        Judgement(inputs, Put);
        return new(values);

        void Put(string field, string? value)
        {
            if (!string.IsNullOrEmpty(value))
                values[field] = value;
        }
    }

    private static void Assumptions(AssumptionsJson assumed, Action<string, string?> put)
    {
        put("maxTemperatureC", Number(assumed.MaxTemperatureC));
        put("cloudOktas", Number(assumed.CloudOktas));
        put("qnh", Number(assumed.QnhHpa));
        foreach (var (cloud, i) in (assumed.CloudByHour ?? []).Take(DeskFields.Periods).Select((cloud, i) => (cloud, i)))
        {
            put($"cloudFrom{i}", cloud.From);
            put($"cloudOktas{i}", Number(cloud.Oktas));
        }

        foreach (var (wind, i) in (assumed.WindByHour ?? []).Take(DeskFields.Periods).Select((wind, i) => (wind, i)))
        {
            put($"windFrom{i}", wind.From);
            put($"windDirection{i}", Number(wind.DirectionDeg));
            put($"windSpeed{i}", Number(wind.SpeedKt));
            put($"windGust{i}", Number(wind.GustKt));
        }
    }

    private static void Judgement(BriefInputs inputs, Action<string, string?> put)
    {
        if (inputs.Judgement is not { } judged)
            return;
        var metric = Choice.Parse<SiteUnits>(inputs.Site.Units) == SiteUnits.Metric;
        put("judgedTrigger", Number(judged.TriggerTemperatureC));
        put("judgedTriggerTime", Time(judged.TriggerTime));
        put("judgedTop", Number(judged.UsableTopAglM is { } top ? Math.Round(metric ? top : Height.FromMetres(top).Feet) : null));
        put("judgedClimb", Number(judged.ClimbMs is { } climb ? Math.Round(metric ? climb : Speed.FromMetresPerSecond(climb).Knots, 2) : null));
        put("judgedLast", Time(judged.LastThermal));
        put("judgedReason", judged.Reason);
    }

    private static string? Number(double? value) => value?.ToString(CultureInfo.InvariantCulture);

    private static string? Time(TimeOnly? time) => time?.ToString("HH:mm", CultureInfo.InvariantCulture);
}
