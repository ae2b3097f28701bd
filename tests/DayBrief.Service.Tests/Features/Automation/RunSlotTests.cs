using DayBrief.Service.Features.Arrivals;
using DayBrief.Service.Features.Automation.Fetching;
using DayBrief.Service.Features.Briefs;
using DayBrief.Service.Features.Sites;

namespace DayBrief.Service.Features.Automation;

/// <summary>Whole runs against a real server on loopback, on the demonstration's invented day of 24 June 2026.</summary>
public sealed class RunSlotTests : IAsyncLifetime
{
    private static readonly DateTimeOffset Morning = new(2026, 6, 24, 4, 0, 0, TimeSpan.Zero);

    private FetchServer _server = null!;

    public async ValueTask InitializeAsync()
    {
        _server = await FetchServer.StartAsync();
        _server.Texts["/2026/06/24/00/99999.csv"] = Demo.Text("anticyclone-short-dry.csv");
    }

    public async ValueTask DisposeAsync() => await _server.DisposeAsync();

    [Fact]
    public async Task The_morning_goes_by_itself_from_ascent_to_draft_to_reminder()
    {
        using var rig = Rig();
        await rig.TickAsync(Morning.AddHours(1.2));
        Assert.Equal(RunCode.SoundingKept, rig.Run(AutomationJob.Sounding).Result!.Code);
        await rig.TickAsync(Morning.AddHours(1.5));
        Assert.Equal(RunCode.DraftMade, rig.Run(AutomationJob.Draft).Result!.Code);
        var draft = rig.Get<SiteDays>().Find("demo", new(2026, 6, 24));
        Assert.Equal(("Testing field", Draft.ByItself), (draft!.Brief.Site.Name, rig.Get<BriefStore>().Find(draft.Id!)!.EditedBy));
        await rig.TickAsync(Morning.AddHours(3));
        Assert.Equal(RunCode.Reminded, rig.Run(AutomationJob.Reminder).Result!.Code);
        Assert.Equal(draft.Id, rig.Get<ReminderStore>().Of("demo", new(2026, 6, 24))!.BriefId);
    }

    /// <summary>An address may hold a key of the club; a brief is read by everybody.</summary>
    [Fact]
    public async Task A_draft_does_not_carry_the_sites_addresses()
    {
        using var rig = Rig();
        await rig.TickAsync(Morning.AddHours(1.6));
        var draft = Assert.Single(rig.Get<BriefStore>().On(new(2026, 6, 24)));
        Assert.NotNull(rig.Get<SiteStore>().Find("demo")!.Automation);
        Assert.DoesNotContain("99999.csv", System.Text.Json.JsonSerializer.Serialize(draft, Infrastructure.Json.Line).Replace("{station}", "99999", StringComparison.Ordinal), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Doubled_runs_and_doubled_ticks_do_nothing_twice()
    {
        using var rig = Rig();
        var reminders = 0;
        rig.Get<ArrivalEvents>().Reminded += _ => reminders++;
        for (var hours = 1.2; hours < 5; hours += 0.4)
            await rig.TickAsync(Morning.AddHours(hours), times: 2);
        Assert.Equal(1, _server.Requests);
        Assert.Equal(1, reminders);
        Assert.Single(rig.Get<BriefStore>().On(new(2026, 6, 24)));
        Assert.All(rig.Ledger.Since(DateTimeOffset.MinValue), run => Assert.Equal(1, run.Attempts));
    }

    [Fact]
    public async Task What_was_missed_while_the_program_was_down_is_caught_up_once()
    {
        using var first = Rig();
        await first.TickAsync(Morning);
        Assert.Equal(0, _server.Requests);
        // Down from 05:00 to 09:00 local; then two more starts on the same data.
        var data = first.Data;
        first.Get<Infrastructure.Database>().Dispose();
        for (var start = 0; start < 2; start++)
        {
            using var rig = Rig(data);
            await rig.TickAsync(Morning.AddHours(4 + start));
            await rig.TickAsync(Morning.AddHours(4.1 + start));
            Assert.Equal(1, _server.Requests);
            Assert.Equal(RunState.Done, rig.Run(AutomationJob.Draft).State);
            rig.Get<Infrastructure.Database>().Dispose();
        }
    }

    [Fact]
    public async Task A_run_that_died_with_the_program_is_taken_up_by_the_next_start_only()
    {
        using var first = Rig();
        first.Clock.Now = Morning.AddHours(1.2);
        var slot = Assert.Single(first.Get<DueRuns>().Now());
        Assert.NotNull(first.Ledger.TryBegin(slot, first.Clock.Now));
        Assert.Empty(first.Get<DueRuns>().Now());
        first.Get<Infrastructure.Database>().Dispose();
        using var second = Rig(first.Data);
        await second.TickAsync(Morning.AddHours(1.3));
        Assert.Equal((RunState.Done, 2), (second.Run(AutomationJob.Sounding).State, second.Run(AutomationJob.Sounding).Attempts));
        second.Get<Infrastructure.Database>().Dispose();
    }

    [Fact]
    public async Task A_fetch_that_the_end_of_the_program_breaks_off_begins_again_at_the_next_start()
    {
        using var rig = Rig(null, _server.At("/silent").ToString());
        rig.Clock.Now = Morning.AddMinutes(72);
        using var stopping = new CancellationTokenSource();
        var slot = Assert.Single(rig.Get<DueRuns>().Now());
        var running = rig.Get<RunSlot>().RunAsync(slot, stopping.Token);
        await Eventually.TrueAsync(() => _server.Requests == 1, TestContext.Current.CancellationToken);
        await stopping.CancelAsync();
        await Assert.ThrowsAnyAsync<OperationCanceledException>(() => running);
        Assert.Equal((RunState.Waiting, rig.Clock.Now), (rig.Run(AutomationJob.Sounding).State, rig.Run(AutomationJob.Sounding).NextAt));
        Assert.Equal(slot.Key, Assert.Single(rig.Get<DueRuns>().Now()).Key);
    }

    [Fact]
    public async Task An_ascent_that_is_late_is_asked_for_again_with_growing_pauses_and_the_draft_waits_for_it()
    {
        _server.Texts.Remove("/2026/06/24/00/99999.csv", out var ascent);
        using var rig = Rig();
        await rig.TickAsync(Morning.AddHours(1.5));
        Assert.Equal((RunState.Waiting, RunCode.FetchFailed), (rig.Run(AutomationJob.Sounding).State, rig.Run(AutomationJob.Sounding).Result!.Code));
        Assert.Equal((RunState.Waiting, RunCode.NoSounding), (rig.Run(AutomationJob.Draft).State, rig.Run(AutomationJob.Draft).Result!.Code));
        Assert.Equal(Morning.AddHours(1.5).AddMinutes(2), rig.Run(AutomationJob.Sounding).NextAt);
        Assert.Empty(await rig.TickAsync(Morning.AddHours(1.5).AddMinutes(1)));
        await rig.TickAsync(Morning.AddHours(1.5).AddMinutes(2));
        Assert.Equal(Morning.AddHours(1.5).AddMinutes(7), rig.Run(AutomationJob.Sounding).NextAt);
        _server.Texts["/2026/06/24/00/99999.csv"] = ascent!;
        await rig.TickAsync(Morning.AddHours(1.5).AddMinutes(7));
        Assert.Equal((RunState.Done, RunState.Done), (rig.Run(AutomationJob.Sounding).State, rig.Run(AutomationJob.Draft).State));
    }

    [Fact]
    public async Task A_page_instead_of_an_ascent_is_refused_with_the_reason_and_nothing_is_kept()
    {
        _server.Texts["/2026/06/24/00/99999.csv"] = "<html><body>Not yet</body></html>";
        using var rig = Rig();
        await rig.TickAsync(Morning.AddHours(1.2));
        var run = rig.Run(AutomationJob.Sounding);
        Assert.Equal((RunState.Waiting, RunCode.ContentRefused), (run.State, run.Result!.Code));
        Assert.NotEmpty(run.Result.Figures[0]);
        Assert.Empty(rig.Get<ArrivalStore>().Of("demo"));
    }

    [Fact]
    public async Task A_refused_address_is_never_asked_for_again()
    {
        using var rig = Rig(null, "http://10.0.0.1/{yyyy}");
        await rig.TickAsync(Morning.AddHours(1.2));
        Assert.Equal((RunState.Failed, null), (rig.Run(AutomationJob.Sounding).State, rig.Run(AutomationJob.Sounding).NextAt));
        Assert.Empty(await rig.TickAsync(Morning.AddHours(1.4)));
    }

    [Fact]
    public async Task Yesterdays_ascent_at_a_fixed_address_is_kept_but_not_taken_for_todays()
    {
        _server.Texts["/latest"] = Demo.Text("anticyclone-short-dry.csv");
        using var rig = Rig(null, _server.At("/latest").ToString());
        await rig.TickAsync(Morning.AddDays(1).AddHours(1.2));
        var run = rig.Run(AutomationJob.Sounding);
        Assert.Equal((RunState.Waiting, RunCode.SoundingOld), (run.State, run.Result!.Code));
    }

    private AutomationRig Rig(string? data = null, string? address = null)
    {
        var rig = new AutomationRig(Morning, data, ("DayBrief:Fetch:AllowedHosts:0", $"127.0.0.1:{_server.Address.Port}"));
        rig.Get<SiteStore>().Save(AutomationRig.Site(new()
        {
            SoundingAddress = address ?? _server.Address + "{yyyy}/{MM}/{dd}/{HH}/{station}.csv",
            Station = "99999",
            SoundingAt = "06:10",
            DraftAt = "06:30",
            RemindAt = "08:00",
        }));
        return rig;
    }
}
