using DayBrief.Service.Features.Sites;
using DayBrief.Service.Infrastructure;

namespace DayBrief.Service.Features.Automation;

/// <summary>Local times on the days when clocks change. Directive 2000/84/EC: the last Sundays of March and October, at 01:00
/// UTC; in 2026 the 29th of March and the 25th of October.</summary>
public sealed class SiteScheduleTests
{
    private static readonly DateOnly Spring = new(2026, 3, 29);
    private static readonly DateOnly Autumn = new(2026, 10, 25);

    /// <summary>Kajaani lies at 64.2° N; Finland's skipped hour is 03:00 to 04:00, its doubled hour too.</summary>
    [Theory]
    [InlineData("Europe/Berlin", "02:30")]
    [InlineData("Europe/Helsinki", "03:30")]
    [InlineData("Europe/London", "01:30")]
    public void A_slot_in_the_skipped_hour_is_due_right_after_it(string zone, string time) =>
        Assert.Equal(
            new DateTimeOffset(2026, 3, 29, 1, 0, 0, TimeSpan.Zero),
            Assert.Single(Schedule(zone, new() { DraftAt = time }).On(Spring)).DueAt.ToUniversalTime());

    [Theory]
    [InlineData("Europe/Berlin", "02:30")]
    [InlineData("Europe/Helsinki", "03:30")]
    [InlineData("Europe/London", "01:30")]
    public void A_slot_in_the_doubled_hour_is_due_at_its_first_showing(string zone, string time) =>
        Assert.Equal(
            new DateTimeOffset(2026, 10, 25, 0, 30, 0, TimeSpan.Zero),
            Assert.Single(Schedule(zone, new() { DraftAt = time }).On(Autumn)).DueAt.ToUniversalTime());

    /// <summary>Iceland (64.1° N) changes no clocks: 06:10 is 06:10 UTC all year, in the white nights too.</summary>
    [Theory]
    [InlineData(3, 29)]
    [InlineData(6, 21)]
    [InlineData(10, 25)]
    [InlineData(12, 21)]
    public void Without_changes_the_time_is_the_same_all_year(int month, int day) =>
        Assert.Equal(
            new DateTimeOffset(2026, month, day, 6, 10, 0, TimeSpan.Zero),
            Assert.Single(Schedule("Atlantic/Reykjavik", new() { DraftAt = "06:10" }).On(new(2026, month, day))).DueAt);

    /// <summary>Midnight to 05:00 shown lasts four hours in spring and six in autumn: half-hourly 9 and 13 times, 11 else.</summary>
    [Theory]
    [InlineData(29, 3, 9)]
    [InlineData(25, 10, 13)]
    [InlineData(1, 6, 11)]
    public void Reports_come_every_half_hour_of_elapsed_time_and_each_slot_once(int day, int month, int expected)
    {
        var slots = Schedule("Europe/Berlin", new() { MetarAddress = "https://example.org/", ReportsFrom = "00:00", ReportsTo = "05:00" }).On(new(2026, month, day));
        Assert.Equal(expected, slots.Count);
        Assert.Equal(expected, slots.Select(slot => slot.Key).Distinct().Count());
        Assert.All(slots.Zip(slots.Skip(1)), pair => Assert.Equal(TimeSpan.FromMinutes(30), pair.Second.DueAt - pair.First.DueAt));
    }

    [Theory]
    [InlineData("Europe/Berlin", "02:30")]
    [InlineData("Europe/Helsinki", "03:30")]
    public async Task Step_by_step_through_both_changes_each_slot_runs_once(string zone, string time)
    {
        using var rig = new AutomationRig(new(2026, 3, 28, 20, 0, 0, TimeSpan.Zero));
        rig.Get<SiteStore>().Save(AutomationRig.Site(new() { RemindAt = time }, zone, 64.2, 27.7));
        foreach (var night in new[] { Spring, Autumn })
        {
            var from = new DateTimeOffset(night.ToDateTime(TimeOnly.MinValue), TimeSpan.Zero).AddHours(-1);
            var begun = new List<DateTimeOffset>();
            for (var now = from; now < from.AddHours(6); now = now.AddMinutes(5))
                begun.AddRange((await rig.TickAsync(now)).Where(slot => slot.Job == AutomationJob.Reminder && slot.Date == night).Select(_ => now));
            Assert.Equal(LocalClock.InstantOf(night, TimeOnly.Parse(time, null), TimeZoneInfo.FindSystemTimeZoneById(zone)), Assert.Single(begun));
        }
    }

    [Fact]
    public void Of_missed_reports_only_the_latest_is_caught_up()
    {
        var schedule = Schedule("Europe/London", new() { MetarAddress = "https://example.org/", ReportsFrom = "08:00", ReportsTo = "12:00", DraftAt = "06:30", RemindAt = "09:00" });
        var due = schedule.DueAt(new(2026, 6, 1, 9, 10, 0, TimeSpan.Zero)).Select(slot => slot.Name);
        Assert.Equal(["06:30", "09:00", "0900Z"], due.Order(StringComparer.Ordinal).OrderBy(name => name.Contains('Z', StringComparison.Ordinal)));
    }

    /// <summary>06:10 in Denver is 12:10 UTC and in Alice Springs 20:40 UTC of the day before.</summary>
    [Theory]
    [InlineData("2026-06-21T04:10:00Z", 0, "2026-06-21T00:00:00Z")]
    [InlineData("2026-06-21T12:10:00Z", 12, "2026-06-21T12:00:00Z")]
    [InlineData("2026-06-20T20:40:00Z", 23, "2026-06-19T23:00:00Z")]
    [InlineData("2026-06-20T20:40:00Z", 12, "2026-06-20T12:00:00Z")]
    public void The_wanted_ascent_is_the_latest_of_its_hour(string at, int hour, string wanted) =>
        Assert.Equal(DateTimeOffset.Parse(wanted, null), Work.FetchSounding.Wanted(DateTimeOffset.Parse(at, null), hour));

    private static SiteSchedule Schedule(string zone, SiteAutomationJson automation) => SiteSchedule.Of(AutomationRig.Site(automation, zone))!;
}
