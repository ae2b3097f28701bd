using DayBrief.Days;
using DayBrief.Service.Features.Arrivals;
using DayBrief.Service.Features.Automation.Fetching;
using DayBrief.Service.Features.Briefs;
using DayBrief.Service.Features.Sites;
using DayBrief.Service.Features.Soundings;
using DayBrief.Service.Languages;

namespace DayBrief.Service.Features.Automation.Work;

/// <summary>Reports from a real server on loopback against the demonstration's invented day.</summary>
public sealed class FetchReportsTests : IAsyncLifetime
{
    private static readonly DateOnly Date = new(2026, 6, 24);
    private static readonly DateTimeOffset Morning = new(2026, 6, 24, 5, 30, 0, TimeSpan.Zero);

    private FetchServer _server = null!;
    private AutomationRig _rig = null!;
    private Brief _brief = null!;

    public async ValueTask InitializeAsync()
    {
        _server = await FetchServer.StartAsync();
        _rig = new(Morning, null, ("DayBrief:Fetch:AllowedHosts:0", $"127.0.0.1:{_server.Address.Port}"));
        var site = AutomationRig.Site(new()
        {
            MetarAddress = _server.Address + "metar/{station}",
            TafAddress = _server.Address + "taf/{station}",
            ReportStation = "ZZZZ",
            ReportsFrom = "07:00",
            ReportsTo = "19:00",
        }) with
        { Limits = new() { GustKt = 25 } };
        _rig.Get<SiteStore>().Save(site);
        _brief = _rig.Get<BriefDesk>().Make(new()
        {
            SoundingId = _rig.Get<SoundingStore>().Save(File.ReadAllBytes(Demo.Path("anticyclone-short-dry.csv")), "demo").Id,
            Site = site,
            Date = Date,
            PreparedAt = Morning,
        }).Brief;
        _server.Texts["/taf/ZZZZ"] = "TAF ZZZZ 240500Z 2406/2415 08006KT CAVOK=";
    }

    public async ValueTask DisposeAsync()
    {
        _rig.Dispose();
        await _server.DisposeAsync();
    }

    [Fact]
    public async Task Reports_of_the_station_are_kept_once_and_those_of_others_not()
    {
        _server.Texts["/metar/ZZZZ"] = "METAR YYYY 240550Z 08006KT CAVOK 14/08 Q1014=\nMETAR ZZZZ 240550Z 08006KT CAVOK 15/08 Q1014=";
        await _rig.TickAsync(Morning.AddHours(0.6));
        await _rig.TickAsync(Morning.AddHours(1.1));
        var kept = Assert.Single(_rig.Get<ReportStore>().Of("demo", ReportKind.Observation, Morning.AddDays(-1), Morning.AddDays(1)));
        Assert.Equal(("ZZZZ", new DateTimeOffset(2026, 6, 24, 5, 50, 0, TimeSpan.Zero)), (kept.Station, kept.At));
        Assert.Equal(["0", "0"], _rig.Run(AutomationJob.Reports).Result!.Figures);
    }

    /// <summary>The trigger of the computed day, rounded up to whole degrees, an hour before it is computed to be reached: 60 min
    /// early, by hand.</summary>
    [Fact]
    public async Task A_trigger_reached_an_hour_early_and_gusts_are_flagged_once_and_told_in_both_languages()
    {
        var flagged = new List<Flag>();
        _rig.Get<ArrivalEvents>().Flagged += flagged.Add;
        var at = _brief.Day.Times.TriggerTime!.Value.AddHours(-1).ToUniversalTime();
        var celsius = Math.Ceiling(_brief.Day.Times.TriggerTemperature!.Value.Celsius);
        _server.Texts["/metar/ZZZZ"] = $"METAR ZZZZ {at:ddHHmm}Z 08014G28KT CAVOK {celsius:00}/08 Q1014=";
        await _rig.TickAsync(at.AddMinutes(10));
        await _rig.TickAsync(at.AddMinutes(40));
        Assert.Equal([DeviationKind.TriggerEarly, DeviationKind.GustOverLimit], flagged.Select(flag => flag.Deviation.Kind).Where(kind => kind is not DeviationKind.Warmer));
        var early = _rig.Get<FlagStore>().Of("demo", Date)[0].Deviation;
        Assert.Equal(60, early.Minutes!.Value, 6);
        var local = TimeZoneInfo.ConvertTime(at, _brief.Site.TimeZone);
        Assert.Equal($"{celsius:0} °C at {local:HH:mm}, trigger reached 60 min early.", FlagText.Of(early, _brief.Site.TimeZone, Language.English));
        Assert.Equal($"{celsius:0} °C um {local:HH:mm}, Auslösetemperatur 60 min früher erreicht.", FlagText.Of(early, _brief.Site.TimeZone, Language.German));
    }

    [Fact]
    public async Task One_address_that_fails_does_not_stop_the_other()
    {
        await _rig.TickAsync(Morning.AddHours(0.6));
        Assert.Equal((RunState.Waiting, RunCode.FetchFailed), (_rig.Run(AutomationJob.Reports).State, _rig.Run(AutomationJob.Reports).Result!.Code));
        Assert.Single(_rig.Get<ReportStore>().Of("demo", ReportKind.Forecast, Morning.AddDays(-1), Morning.AddDays(1)));
    }

    [Fact]
    public async Task Text_that_is_no_report_says_so()
    {
        _server.Texts["/metar/ZZZZ"] = "<html>Sorry</html>";
        await _rig.TickAsync(Morning.AddHours(0.6));
        Assert.Equal(RunCode.NoReports, _rig.Run(AutomationJob.Reports).Result!.Code);
    }
}
