using DayBrief.Reports;
using DayBrief.Units;

namespace DayBrief.Days;

/// <summary>A course that warms by 2 °C an hour, so that a difference of 2 °C is worth an hour: arithmetic, no source needed.</summary>
public sealed class ObservedCourseTests
{
    private static readonly DateTimeOffset Midnight = new(2026, 6, 21, 0, 0, 0, TimeSpan.Zero);

    // 10 °C at 6, 20 °C at 11, trigger 16 °C at 9, coldest and warmest at the ends.
    private static readonly DayCourse Course = new(
        [.. Enumerable.Range(0, 61).Select(i => new TimedTemperature(Midnight.AddHours(6).AddMinutes(5 * i), Temperature.FromCelsius(10 + (i / 6.0))))],
        Temperature.FromCelsius(16), Midnight.AddHours(9), Midnight.AddHours(11));

    [Theory]
    [InlineData("210800Z", 12, 10, 0, 60)]
    [InlineData("210800Z", 13, 9, 30, 30)]
    [InlineData("210800Z", 14, 9, 0, 0)]
    [InlineData("210730Z", 15, 8, 0, -60)]
    public void The_trigger_moves_with_the_difference(string time, int celsius, int hour, int minute, double later)
    {
        var course = Of(0, $"{time} 24005KT 9999 {celsius:00}/05 Q1020");
        Assert.Equal(Midnight.AddHours(hour).AddMinutes(minute), course.Trigger);
        Assert.Equal(later, course.Later!.Value.TotalMinutes, tolerance: 1e-6);
        Assert.False(course.TriggerIsLost);
    }

    [Fact]
    public void A_morning_five_degrees_too_cold_does_not_reach_the_trigger()
    {
        var course = Of(0, "210800Z 24005KT 9999 09/05 Q1020");
        Assert.Null(course.Trigger);
        Assert.True(course.TriggerIsLost);
        Assert.Equal(-5, course.Points[0].Difference.Kelvins, tolerance: 1e-9);
    }

    [Fact]
    public void A_trigger_that_was_observed_is_reached()
    {
        var course = Of(0, "210720Z 24005KT 9999 13/05 Q1020", "210820Z 24005KT 9999 16/05 Q1020");
        Assert.Equal(Midnight.AddHours(8).AddMinutes(20), course.Reached);
        Assert.Null(course.Trigger);
    }

    /// <summary>300 m above the field: 2.9 °C by the dry adiabat.</summary>
    [Fact]
    public void A_station_above_the_field_is_brought_to_it() =>
        Assert.Equal(14.93, Of(300, "210800Z 24005KT 9999 12/05 Q1020").Points[0].Observed.Celsius, tolerance: 0.02);

    [Fact]
    public void Without_observation_nothing_is_told()
    {
        var course = Of(0, "210800Z 24005KT 9999 ///// Q1020");
        Assert.Empty(course.Points);
        Assert.Null(course.Trigger);
        Assert.False(course.TriggerIsLost);
    }

    private static ObservedCourse Of(double above, params string[] reports) => ObservedCourse.Of(new()
    {
        Course = Course,
        StationAboveFieldM = above,
        Reports = [.. reports.Select(text => MetarReader.Read($"METAR ZZZZ {text}")).Select(report => new TimedReport(report.Time.NearestTo(Midnight)!.Value, report))],
    });
}
