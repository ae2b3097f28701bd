using DayBrief.Reports;
using DayBrief.Units;

namespace DayBrief.Days;

/// <summary>Constructed days whose answer is worked out by hand: the screen warms by 2 K an hour, from 14 °C at 08:00 to
/// 26 °C at 14:00, then stays; so 24 °C, the trigger, is reached at 13:00.</summary>
public sealed class ComparedDayTests
{
    private static readonly DateTimeOffset Midnight = new(2026, 6, 21, 0, 0, 0, TimeSpan.Zero);

    private static readonly DayCourse Course = new(
        [.. Enumerable.Range(0, 11).Select(hour => new TimedTemperature(Midnight.AddHours(8 + hour), Celsius(Math.Min(14 + (2 * hour), 26))))],
        Celsius(24),
        Midnight.AddHours(13),
        Midnight.AddHours(17));

    [Fact]
    public void A_trigger_reached_at_1220_instead_of_1300_is_40_minutes_early()
    {
        var flag = Only(DeviationKind.TriggerEarly, "211150Z 24010KT 9999 FEW040 23/10 Q1018", "211220Z 24010KT 9999 FEW040 24/10 Q1018");
        Assert.Equal(40, flag.Minutes);
        Assert.Equal((24.0, 24.0), (flag.Observed, flag.Expected));
        Assert.Equal(Midnight.AddHours(12).AddMinutes(20), flag.At);
    }

    /// <summary>13:00 − 12:50 = 10 min, less than what is worth saying.</summary>
    [Fact]
    public void Ten_minutes_are_not_worth_a_flag() => Assert.Empty(Of("211250Z 24010KT 9999 24/10 Q1018"));

    /// <summary>24 − 23 = 1 K is more than the half degree that rounding hides; 13:20 − 13:00 = 20 min.</summary>
    [Fact]
    public void A_trigger_still_missing_20_minutes_later_is_told()
    {
        var flag = Only(DeviationKind.TriggerNotYet, "211320Z 24010KT 9999 23/10 Q1018");
        Assert.Equal(20, flag.Minutes);
    }

    [Fact]
    public void A_trigger_reached_at_1350_instead_of_1300_is_50_minutes_late()
    {
        var flag = Only(DeviationKind.TriggerLate, "211320Z 24010KT 9999 23/10 Q1018", "211350Z 24010KT 9999 24/10 Q1018");
        Assert.Equal(50, flag.Minutes);
    }

    /// <summary>After the last thermal (17:00) the air may cool below the trigger without meaning anything.</summary>
    [Fact]
    public void A_cool_evening_is_no_late_trigger() =>
        Assert.DoesNotContain(Of("211750Z 24010KT 9999 20/10 Q1018"), flag => flag.Kind == DeviationKind.TriggerNotYet);

    [Fact]
    public void A_trigger_that_was_not_expected_has_no_minutes()
    {
        var watch = Watch("211220Z 24010KT 9999 24/10 Q1018");
        var flag = Assert.Single(ComparedDay.Of(watch with { Course = Course with { TriggerTime = null } }));
        Assert.Equal((DeviationKind.TriggerEarly, null), (flag.Kind, flag.Minutes));
    }

    /// <summary>At 09:30 the computed screen has 14 + 1.5 · 2 = 17 °C.</summary>
    [Theory]
    [InlineData(20, DeviationKind.Warmer)]
    [InlineData(14, DeviationKind.Colder)]
    public void Three_degrees_off_at_0930_are_told_with_the_computed_17(int observed, DeviationKind kind)
    {
        var flag = Only(kind, $"210930Z 24010KT 9999 {observed}/08 Q1018");
        Assert.Equal(17, flag.Expected!.Value, 9);
    }

    /// <summary>2 K are within rounding of what is worth saying.</summary>
    [Fact]
    public void Two_degrees_off_are_not_told() => Assert.Empty(Of("210930Z 24010KT 9999 19/08 Q1018"));

    /// <summary>300 m higher is 300 · 9.80665 / 1004.7 ≈ 2.9 K colder in stirred air: 21 °C there is 23.9 °C here, below the
    /// trigger; 22 °C is 24.9 °C.</summary>
    [Theory]
    [InlineData(21, 0)]
    [InlineData(22, 1)]
    public void A_station_300_m_higher_is_brought_down_to_the_field(int observed, int early) =>
        Assert.Equal(
            early,
            ComparedDay.Of(Watch($"211220Z 24010KT 9999 {observed}/10 Q1018") with { StationAboveFieldM = 300 })
                .Count(flag => flag.Kind == DeviationKind.TriggerEarly));

    [Fact]
    public void Wind_and_gusts_over_the_sites_limits_are_told_by_their_worst()
    {
        var watch = Watch("210920Z 24016G28KT 9999 17/08 Q1018", "210950Z 24021G32KT 9999 18/08 Q1018", "211020Z 24012KT 9999 19/08 Q1018") with
        {
            WindLimit = Speed.FromKnots(20),
            GustLimit = Speed.FromKnots(25),
        };
        Assert.Equal(
            [(DeviationKind.WindOverLimit, 21.0, 20.0), (DeviationKind.GustOverLimit, 32.0, 25.0)],
            ComparedDay.Of(watch).Select(flag => (flag.Kind, Math.Round(flag.Observed!.Value, 6), Math.Round(flag.Expected!.Value, 6))));
    }

    [Fact]
    public void Without_limits_no_wind_is_told() => Assert.Empty(Of("210950Z 24041G52KT 9999 18/08 Q1018"));

    [Theory]
    [InlineData("VCTS")]
    [InlineData("-TSRA")]
    public void Thunder_reported_is_told(string group) =>
        Assert.Equal(group, Only(DeviationKind.Thunder, $"210950Z 24010KT 9999 {group} SCT030CB 18/08 Q1018").Group);

    [Fact]
    public void Thunder_in_a_newer_forecast_is_told_unless_the_brief_has_it()
    {
        var thunder = TafReader.Read("TAF ZZZZ 211100Z 2112/2121 24010KT 9999 SCT040 TEMPO 2114/2118 TSRA");
        var dry = TafReader.Read("TAF ZZZZ 210500Z 2106/2115 24010KT 9999 SCT040");
        var watch = Watch() with { BriefForecast = dry, LatestForecast = (thunder, Midnight.AddHours(11)) };
        Assert.Equal("TEMPO 2114/2118 TSRA", Assert.Single(ComparedDay.Of(watch)).Group);
        Assert.Empty(ComparedDay.Of(watch with { BriefForecast = thunder }));
    }

    [Theory]
    [InlineData(1015, 1018, 1)]
    [InlineData(1017, 1018, 0)]
    public void A_QNH_two_or_more_from_the_briefs_is_told(int reported, int brief, int flags) =>
        Assert.Equal(flags, ComparedDay.Of(Watch($"210950Z 24010KT 9999 18/08 Q{reported}") with { Qnh = Pressure.FromHectopascals(brief) }).Length);

    [Fact]
    public void The_order_of_the_reports_does_not_matter()
    {
        string[] reports = ["211150Z 24010KT 9999 22/10 Q1018", "211220Z 24010KT 9999 25/10 Q1015", "211250Z 24010KT 9999 TS 26/10 Q1014"];
        Assert.Equal(Of(reports), Of([.. reports.Reverse()]));
        Assert.Equal([DeviationKind.TriggerEarly, DeviationKind.Thunder, DeviationKind.Qnh], Of(reports).Select(flag => flag.Kind));
    }

    private static Deviation Only(DeviationKind kind, params string[] reports)
    {
        var flag = Assert.Single(Of(reports));
        Assert.Equal(kind, flag.Kind);
        return flag;
    }

    private static IReadOnlyList<Deviation> Of(params string[] reports) => [.. ComparedDay.Of(Watch(reports))];

    private static DayWatch Watch(params string[] reports) => new()
    {
        Course = Course,
        Reports = [.. reports.Select(text => MetarReader.Read($"METAR ZZZZ {text}")).Select(report => new TimedReport(report.Time.NearestTo(Midnight)!.Value, report))],
    };

    private static Temperature Celsius(double value) => Temperature.FromCelsius(value);
}
