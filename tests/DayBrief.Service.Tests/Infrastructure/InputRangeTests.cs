using System.Globalization;
using System.Text.Json;
using System.Text.Json.Nodes;
using DayBrief.Service.Features.Briefs;
using DayBrief.Service.Features.Centring;
using DayBrief.Service.Features.Sites;
using DayBrief.Service.Features.Soundings;
using Microsoft.AspNetCore.Http;

namespace DayBrief.Service.Infrastructure;

/// <summary>Every number of the table at, beyond and far beyond both ends of its range, put in at the place it comes from.</summary>
public sealed class InputRangeTests
{
    private static readonly string[] Groups = ["leastCirclingHeightM", "steepestBankDeg", "limits.crosswindKt"];

    public static TheoryData<string> Fields => [.. InputRange.All.Select(range => range.Field)];

    [Theory]
    [MemberData(nameof(Fields))]
    public void A_number_is_taken_up_to_its_ends_and_refused_by_name_beyond_them(string field)
    {
        var range = InputRange.Of(field);
        // Half a unit beyond would be rounded by a whole number; one is beyond for both.
        var whole = Math.Max(1, Math.Abs(range.Most) * 1e-3);
        foreach (var taken in new[] { range.Least, range.Most })
            Assert.DoesNotContain(Refused(field, taken), error => Names(error, field) && error.Detail.Contains(" from ", StringComparison.Ordinal));
        foreach (var beyond in new[] { range.Least - whole, range.Most + whole, -1e6, 1e9, -1e308, 1e308 })
        {
            if (field is "ascentIndex" or "ensemble" or "automation.soundingHourUtc" or "automation.reportsEveryMinutes" && Math.Abs(beyond) > int.MaxValue)
                continue; // JSON itself refuses what is no whole number of 32 bits.
            Assert.Contains(Refused(field, beyond), error => Names(error, field));
        }
    }

    [Theory]
    [InlineData("runways[3].headingDeg", "headingDeg")]
    [InlineData("limits.crosswindKt.beforeSolo", "limits.crosswindKt")]
    [InlineData("leastCirclingHeightM.localSolo", "leastCirclingHeightM")]
    [InlineData("windByHour[0].gustKt", "gustKt")]
    public void The_row_of_a_path_is_found_by_its_end_or_its_beginning(string path, string row) => Assert.Equal(row, InputRange.Of(path).Field);

    [Fact]
    public void A_number_without_a_row_cannot_be_read() =>
        Assert.Throws<KeyNotFoundException>(() => new FieldErrors().Number("somethingNew", 1));

    /// <summary>One character more than a text may have, and a thousand times as many.</summary>
    [Fact]
    public void Every_text_of_a_brief_has_a_greatest_length()
    {
        foreach (var (field, most, _) in BriefLimits.Texts)
        {
            foreach (var (length, refused) in new[] { (most, false), (most + 1, true), (most * 1000, true) })
            {
                var errors = ErrorsOf(() => BriefLimits.Check(WithText(field, new string('x', length))));
                Assert.Equal(refused, errors.Any(error => error.Field == field));
            }
        }
    }

    [Theory]
    [InlineData("0001-01-01", true)]
    [InlineData("1899-12-31", true)]
    [InlineData("1900-01-01", false)]
    [InlineData("2100-12-31", false)]
    [InlineData("2101-01-01", true)]
    [InlineData("9999-12-31", true)]
    public void Days_at_the_ends_of_the_calendar_are_refused(string date, bool refused) => Assert.Equal(
        refused,
        ErrorsOf(() => BriefLimits.Check(Inputs(new()) with { Date = DateOnly.Parse(date, CultureInfo.InvariantCulture) })).Any(error => error.Field == "date"));

    [Theory]
    [InlineData("a1b2c3d4e5", false)]
    [InlineData("demo_day-1", false)]
    [InlineData("x\r\nLOCATION:elsewhere", true)]
    [InlineData("größe", true)]
    [InlineData("", true)]
    public void An_id_cannot_carry_a_line_or_a_letter_that_a_header_cannot(string id, bool refused) =>
        Assert.Equal(refused, ErrorsOf(() => BriefLimits.CheckId(id)).Count > 0);

    private static bool Names(ProblemError error, string field) =>
        error.Field is { } named && InputRange.Find(named)?.Field == field;

    private static IReadOnlyList<ProblemError> Refused(string field, double value) => field switch
    {
        "surfaceTemperature" or "elevation" => ErrorsOf(() => AnalysisOptions.Of(
            new QueryCollection(new Dictionary<string, Microsoft.Extensions.Primitives.StringValues> { [field] = value.ToString("R", CultureInfo.InvariantCulture) }))),
        "ascentIndex" => ErrorsOf(() => BriefLimits.Check(Inputs(new()) with { AscentIndex = (int)value })),
        "ascentLatitude" => ErrorsOf(() => BriefLimits.Check(Inputs(new()) with { AscentLatitude = value })),
        "ascentLongitude" => ErrorsOf(() => BriefLimits.Check(Inputs(new()) with { AscentLongitude = value })),
        "ascentElevationM" => ErrorsOf(() => BriefLimits.Check(Inputs(new()) with { AscentElevationM = value })),
        "triggerTemperatureC" or "usableTopAglM" or "climbMs" => ErrorsOf(() => Read<JudgementJson>(field, value).Check()),
        "coreUpdraftMs" or "radiusM" or "depthM" or "lifetimeMin" or "windShearMsPerKm" => ErrorsOf(() => Read<ThermalJson>(field, value).ToThermal()),
        "oktas" => ErrorsOf(() => Read<AssumptionsJson>("cloudByHour", new JsonArray(new JsonObject { ["from"] = "12:00", [field] = value })).ToAssumptions()),
        "directionDeg" or "speedKt" or "gustKt" => ErrorsOf(() => Read<AssumptionsJson>("windByHour", new JsonArray(Wind(field, value))).ToAssumptions()),
        "maxTemperatureC" or "mixedTemperatureC" or "cloudOktas" or "qnhHpa" or "ensemble" => ErrorsOf(() => Read<AssumptionsJson>(field, Number(field, value)).ToAssumptions()),
        "headingDeg" or "headingMagneticDeg" => ErrorsOf(() => Read<SiteJson>("runways", new JsonArray(new JsonObject { ["designator"] = "09", [field] = value })).ToSite()),
        _ => ErrorsOf(() => Site(field, value).ToSite()),
    };

    private static SiteJson Site(string field, double value)
    {
        var path = Groups.Contains(field) ? $"{field}.localSolo" : field;
        var parts = path.Split('.');
        JsonNode node = Number(field, value);
        foreach (var part in parts.Skip(1).Reverse())
            node = new JsonObject { [part] = node };
        return Read<SiteJson>(parts[0], node);
    }

    private static JsonObject Wind(string field, double value)
    {
        var wind = new JsonObject { ["from"] = "12:00", ["directionDeg"] = 90, ["speedKt"] = field == "gustKt" ? 0 : 5 };
        wind[field] = value;
        return wind;
    }

    private static JsonNode Number(string field, double value) =>
        field is "ensemble" or "automation.soundingHourUtc" or "automation.reportsEveryMinutes" ? (int)value : value;

    private static T Read<T>(string property, JsonNode value) => new JsonObject { [property] = value }.Deserialize<T>(Json.Line)!;

    private static BriefInputs WithText(string field, string text) => field switch
    {
        "preparedBy" => Inputs(new()) with { PreparedBy = text },
        "observation" => Inputs(new()) with { Observation = text },
        "forecast" => Inputs(new()) with { Forecast = text },
        "instructorNote" => Inputs(new()) with { InstructorNote = text },
        "dayLimits" => Inputs(new()) with { DayLimits = text },
        "noteBeforeSolo" => Inputs(new()) with { Notes = new(text, null, null) },
        "noteLocalSolo" => Inputs(new()) with { Notes = new(null, text, null) },
        "noteCrossCountry" => Inputs(new()) with { Notes = new(null, null, text) },
        "judgedReason" => Inputs(new()) with { Judgement = new() { Reason = text } },
        _ => throw new ArgumentOutOfRangeException(nameof(field), field, "Say here how this text comes in."),
    };

    private static BriefInputs Inputs(AssumptionsJson assumptions) => new()
    {
        SoundingId = "one",
        Site = new(),
        Date = new(2026, 5, 21),
        PreparedAt = DateTimeOffset.UnixEpoch,
        Assumptions = assumptions,
    };

    private static IReadOnlyList<ProblemError> ErrorsOf(Action read)
    {
        try
        {
            read();
            return [];
        }
        catch (InvalidInputException refused)
        {
            return refused.Errors;
        }
    }
}
