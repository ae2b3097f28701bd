using DayBrief.House;
using DayBrief.Reports;
using DayBrief.Soundings;
using DayBrief.Units;

namespace DayBrief.Days;

/// <summary>The wind on the runway by the hour. [FAA-25] ch. 11: head wind U cos α, cross wind U sin α; by hand 20 kt at 30° to the
/// runway are 10 kt across.</summary>
public sealed class RunwayHourTests
{
    private static readonly DateOnly Date = new(2026, 5, 21);

    [Fact]
    public void What_the_instructor_assumes_goes_before_the_forecast_and_the_forecast_before_the_report()
    {
        const string metar = "METAR ZZZZ 210720Z 06010KT 9999 FEW030 10/05 Q1015";
        const string taf = "TAF ZZZZ 210500Z 2106/2118 27020KT 9999 SCT030";
        Assert.Equal((WindSource.Reported, "06"), Seen(RunwayHour.At(Made(metar, null, null), At(9))));
        Assert.Equal((WindSource.Forecast, "24"), Seen(RunwayHour.At(Made(metar, taf, null), At(9))));
        Assert.Equal(10, RunwayHour.At(Made(metar, taf, null), At(9))!.Value.Across.Knots, tolerance: 0.01);  // 270° on a runway of 240°
        Assert.Equal((WindSource.Assumed, "06"), Seen(RunwayHour.At(Made(metar, taf, new TimeOnly(8, 0)), At(9))));
    }

    [Fact]
    public void Gusts_and_what_is_only_possible_count_across()
    {
        var brief = Made(null, "TAF ZZZZ 210500Z 2106/2118 24010KT 9999 SCT030 TEMPO 2112/2115 33020G40KT", null);
        Assert.Equal(0, RunwayHour.At(brief, At(11))!.Value.Across.Knots, tolerance: 0.1);
        Assert.Equal(40, RunwayHour.At(brief, At(14))!.Value.Across.Knots, tolerance: 0.1);
        Assert.Equal("24", RunwayHour.At(brief, At(14))!.Value.Runway.Designator);
    }

    [Fact]
    public void A_wind_that_was_seen_once_is_not_known_three_hours_later()
    {
        var brief = Made("METAR ZZZZ 210720Z 24010KT 9999 FEW030 10/05 Q1015", null, null);
        Assert.Equal(WindSource.Reported, RunwayHour.At(brief, At(9))!.Value.Source);
        Assert.Null(RunwayHour.At(brief, At(12)));
    }

    [Fact]
    public void A_direction_that_varies_says_nothing_across() =>
        Assert.Null(RunwayHour.At(Made(null, "TAF ZZZZ 210500Z 2106/2118 VRB05KT 9999 SCT030", null), At(12)));

    private static (WindSource, string) Seen(RunwayHour? hour) => (hour!.Value.Source, hour.Value.Runway.Designator);

    private static DateTimeOffset At(int hour) => new(Date, new(hour, 0), TimeSpan.FromHours(1));

    private static Brief Made(string? metar, string? taf, TimeOnly? assumedFrom)
    {
        var file = Path.Combine(Repository.Root, "soundings", "broad-post-frontal.txt");
        return Brief.Prepare(new()
        {
            Sounding = SoundingReader.Read(File.ReadAllBytes(file), file),
            Site = new Site
            {
                Position = Position.FromDegrees(52.24, -1.41),
                Elevation = Altitude.FromMetres(118),
                TimeZone = TimeZoneInfo.FindSystemTimeZoneById("Europe/London"),
                Runways = [new("06", 60), new("24", 240)],
            },
            Date = Date,
            PreparedAt = new(Date, new(6, 30), TimeSpan.Zero),
            Assumptions = new()
            {
                EnsembleSize = 0,
                WindByHour = assumedFrom is { } from ? [new(from, Wind.From(60, Speed.FromKnots(12)), null)] : [],
            },
            Observation = metar is null ? null : MetarReader.Read(metar),
            Forecast = taf is null ? null : TafReader.Read(taf),
        });
    }
}
