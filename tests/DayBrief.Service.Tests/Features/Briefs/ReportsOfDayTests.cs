using DayBrief.Service.Infrastructure;

namespace DayBrief.Service.Features.Briefs;

/// <summary>Which of several reports a brief takes; stations and reports are invented.</summary>
public sealed class ReportsOfDayTests
{
    private const string Calm = "METAR XXAA 210950Z 27004KT CAVOK 18/07 Q1020";
    private const string Gusts = "METAR XXAA 211020Z 30022G40KT 9999 BKN030 16/08 Q1019";
    private const string Foreign = "METAR XXBB 211050Z 00000KT 0200 FG VV001 09/09 Q1021";

    [Theory]
    [InlineData(Calm, Gusts)]
    [InlineData(Gusts, Calm)]
    public void The_order_of_lines_does_not_decide_whether_gusts_are_told(string first, string second)
    {
        var report = ReportsOfDay.Observation(Inputs($"{first}\n{second}", null))!;
        Assert.Equal(40, report.Conditions.Wind!.Gust!.Value.Knots, tolerance: 1e-9);
    }

    [Theory]
    [InlineData(Calm, Foreign)]
    [InlineData(Foreign, Calm)]
    public void Another_stations_fog_is_not_ours(string first, string second)
    {
        var report = ReportsOfDay.Observation(Inputs($"{first}\n{second}", "XXAA"))!;
        Assert.Equal("XXAA", report.Station);
        Assert.Empty(report.Conditions.Weather);
    }

    [Theory]
    [InlineData(Calm, Foreign)]
    [InlineData(Foreign, Calm)]
    public void Several_stations_of_which_none_is_named_are_refused_with_what_to_do(string first, string second)
    {
        var refused = Assert.Throws<InvalidInputException>(() => ReportsOfDay.Observation(Inputs($"{first}\n{second}", null)));
        var error = Assert.Single(refused.Errors);
        Assert.Equal(("station-not-named", "observation"), (error.Code, error.Field));
        Assert.Contains("XXAA", error.Detail, StringComparison.Ordinal);
        Assert.Contains("XXBB", error.Detail, StringComparison.Ordinal);
    }

    private static BriefInputs Inputs(string observation, string? station) => new()
    {
        SoundingId = "1",
        Date = new(2026, 6, 21),
        PreparedAt = new(2026, 6, 21, 6, 0, 0, TimeSpan.Zero),
        Observation = observation,
        Site = new()
        {
            Id = "field",
            Name = "Field",
            Latitude = 48.5,
            Longitude = 9.3,
            ElevationM = 350,
            TimeZone = "Europe/Berlin",
            Automation = station is null ? null : new() { ReportStation = station },
        },
    };
}
