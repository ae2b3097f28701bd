using System.Text.Json;
using DayBrief.Service.Features.Briefs;
using DayBrief.Service.Features.Sites;
using DayBrief.Service.Infrastructure;

namespace DayBrief.Service.Features.Desk;

[Collection(OneService.Name)]
public sealed class DeskReadingTests(ServiceHost host)
{
    private static readonly DateTimeOffset Now = new(2026, 5, 21, 5, 30, 0, TimeSpan.Zero);

    /// <summary>1 ft = 0.3048 m and 1 kt = 1852 m/h by definition: 4,000 ft are 1219.2 m, 3 kt are 1.5433 m/s.</summary>
    [Fact]
    public void A_judgement_typed_in_feet_and_knots_is_kept_in_SI()
    {
        var inputs = Read(("judgedTop", "4000"), ("judgedClimb", "3"), ("judgedLast", "17.30"), ("judgedReason", "sea breeze"));
        Assert.Equal(1219.2, inputs.Judgement!.UsableTopAglM);
        Assert.Equal(1.5433, inputs.Judgement.ClimbMs);
        Assert.Equal(new TimeOnly(17, 30), inputs.Judgement.LastThermal);
        Assert.Equal("sea breeze", inputs.Judgement.Reason);
    }

    [Fact]
    public void What_the_fields_mean_can_be_put_back_into_fields_and_means_the_same()
    {
        var inputs = Read(
            ("maxTemperatureC", "17,5"), ("cloudOktas", "2"), ("cloudFrom0", "13:00"), ("cloudOktas0", "5"), ("windFrom0", "10:00"),
            ("windDirection0", "240"), ("windSpeed0", "12"), ("windGust0", "22"), ("qnh", "1021"), ("noteBeforeSolo", "with an instructor"),
            ("dayLimits", "No solo after 17:00\nCrosswind 8 kt"), ("validUntil", "18:00"), ("judgedTrigger", "14"), ("judgedTriggerTime", "10:15"),
            ("judgedTop", "4000"), ("judgedClimb", "3"), ("observation", "METAR ZZZZ 210520Z 24006KT 9999 FEW030 10/06 Q1021="));
        var again = new DeskReading(InputFields.Of(inputs), host.Get<SiteStore>()).Read(inputs.SoundingId, Now);
        Assert.Equal(JsonSerializer.Serialize(inputs, Json.Line), JsonSerializer.Serialize(again, Json.Line));
    }

    [Theory]
    [InlineData("maxTemperatureC", "warm")]
    [InlineData("maxTemperatureC", "90")]
    [InlineData("judgedLast", "25:00")]
    [InlineData("validUntil", "evening")]
    [InlineData("windSpeed0", "12")] // without a time
    [InlineData("site", "nowhere")]
    [InlineData("date", "yesterday")]
    public void What_cannot_be_used_is_named_by_its_field(string field, string value)
    {
        var refused = Assert.Throws<InvalidInputException>(() => Read((field, value)));
        Assert.Contains(refused.Errors, error => error.Field == field.Replace("Speed", "From", StringComparison.Ordinal));
    }

    private BriefInputs Read(params (string Name, string Value)[] fields)
    {
        var all = new Dictionary<string, string> { ["site"] = "harrowmere", ["date"] = "2026-05-21", ["groundWetness"] = "normal" };
        foreach (var (name, value) in fields)
            all[name] = value;
        return new DeskReading(new DeskFields(all), host.Get<SiteStore>()).Read("0123456789abcdef", Now);
    }
}
