using System.Net;
using System.Text.Json.Nodes;
using DayBrief.Service.Features.Arrivals;
using DayBrief.Service.Features.Automation.Fetching;
using DayBrief.Service.Features.Sites;

namespace DayBrief.Service.Features.Automation;

/// <summary>The whole service with its queue: settings, status, a run by hand, and a restart in the middle.</summary>
[Collection(OneService.Name)]
public sealed class StatusTests : IAsyncLifetime
{
    private const string Key = "a-key-for-these-tests-of-32-characters";

    private readonly SetClock _clock = new(new(2026, 6, 24, 4, 0, 0, TimeSpan.Zero));
    private FetchServer _server = null!;
    private ServiceHost _host = null!;

    public async ValueTask InitializeAsync()
    {
        _server = await FetchServer.StartAsync();
        _server.Texts["/2026062400/99999"] = Demo.Text("anticyclone-short-dry.csv");
        _host = ServiceHost.With(
            _clock, ("DAYBRIEF_ADMIN_KEY", Key), ("DayBrief:Fetch:AllowedHosts:0", $"127.0.0.1:{_server.Address.Port}"));
        _host.Get<SiteStore>().Save(SiteJson.Parse(Demo.Site));
    }

    public async ValueTask DisposeAsync()
    {
        await _host.DisposeAsync();
        await _server.DisposeAsync();
    }

    [Fact]
    public async Task Set_on_a_page_missed_while_down_caught_up_after_the_restart_once()
    {
        using (var client = Client())
        {
            var kept = await client.PostAsync("/sites/demo/automation", Form(_server.Address + "{yyyy}{MM}{dd}{HH}/{station}"), TestContext.Current.CancellationToken);
            Assert.Equal(HttpStatusCode.Redirect, kept.StatusCode);
        }

        Assert.Equal(0, _server.Requests);
        _clock.Now = _clock.Now.AddHours(3.5);
        await _host.RestartAsync();
        await UntilAsync(status => State(status, "draft") == "done");
        await _host.RestartAsync();
        await UntilAsync(status => State(status, "reminder") == "done");
        Assert.Equal(1, _server.Requests);
        using var again = Client();
        var page = await again.GetStringAsync("/status?language=de", TestContext.Current.CancellationToken);
        Assert.Contains("Entwurf vorbereitet.", page, StringComparison.Ordinal);
        Assert.Contains("Das heutige Briefing war um 08:30 nicht unterschrieben.", WebUtility.HtmlDecode(page), StringComparison.Ordinal);
        Assert.Contains("Today&#x27;s brief was not signed by 08:30.", await again.GetStringAsync("/desk?language=en", TestContext.Current.CancellationToken), StringComparison.Ordinal);
    }

    [Fact]
    public async Task What_cannot_be_used_is_named_at_its_field_and_nothing_entered_is_lost()
    {
        using var client = Client();
        var refused = await client.PostAsync("/sites/demo/automation", Form("gopher://example.org/{station}", "25:10"), TestContext.Current.CancellationToken);
        var page = WebUtility.HtmlDecode(await refused.Content.ReadAsStringAsync(TestContext.Current.CancellationToken));
        Assert.Equal(HttpStatusCode.UnprocessableEntity, refused.StatusCode);
        Assert.Contains("value=\"gopher://example.org/{station}\"", page, StringComparison.Ordinal);
        Assert.Contains("id=\"automation.soundingAddress-error\"", page, StringComparison.Ordinal);
        Assert.Contains("id=\"automation.soundingAt-error\"", page, StringComparison.Ordinal);
        Assert.Null(_host.Get<SiteStore>().Find("demo")!.Automation);
    }

    [Fact]
    public async Task The_second_of_two_administrators_is_told_keeps_what_was_typed_and_overwrites_nothing()
    {
        using var client = Client();
        var page = await client.GetStringAsync("/sites/demo/automation", TestContext.Current.CancellationToken);
        var seen = _host.Get<SiteStore>().FindKept("demo")!.Version;
        Assert.Contains($"name=\"version\" value=\"{seen}\"", page, StringComparison.Ordinal);
        await client.PostAsync("/sites/demo/automation", Form(seen, "https://example.org/first/{station}"), TestContext.Current.CancellationToken);
        var second = await client.PostAsync("/sites/demo/automation?language=de", Form(seen, "https://example.org/second/{station}"), TestContext.Current.CancellationToken);
        var told = WebUtility.HtmlDecode(await second.Content.ReadAsStringAsync(TestContext.Current.CancellationToken));
        Assert.Equal(HttpStatusCode.Conflict, second.StatusCode);
        Assert.Contains("Jemand anders hat diesen Platz inzwischen geändert.", told, StringComparison.Ordinal);
        Assert.Contains("value=\"https://example.org/second/{station}\"", told, StringComparison.Ordinal);
        Assert.Equal("https://example.org/first/{station}", _host.Get<SiteStore>().Find("demo")!.Automation!.SoundingAddress);
        // Having compared, the second puts this in its place: the form carries the newer version.
        Assert.Contains($"name=\"version\" value=\"{seen + 1}\"", told, StringComparison.Ordinal);
        var kept = await client.PostAsync("/sites/demo/automation", Form(seen + 1, "https://example.org/second/{station}"), TestContext.Current.CancellationToken);
        Assert.Equal(HttpStatusCode.Redirect, kept.StatusCode);
    }

    /// <summary>An address may hold a key of the club.</summary>
    [Fact]
    public async Task Only_administrators_are_given_the_addresses_of_a_site()
    {
        using (var client = Client())
        {
            await client.PostAsync("/sites/demo/automation", Form("https://example.org/secret-key/{station}"), TestContext.Current.CancellationToken);
            Assert.Contains("secret-key", await client.GetStringAsync("/api/v1/sites/demo", TestContext.Current.CancellationToken), StringComparison.Ordinal);
        }

        using var instructor = await _host.SignedInAsync(People.Role.Instructor);
        foreach (var path in new[] { "/api/v1/sites/demo", "/api/v1/sites" })
        {
            var site = await instructor.GetStringAsync(path, TestContext.Current.CancellationToken);
            Assert.Contains("Testing field", site, StringComparison.Ordinal);
            Assert.DoesNotContain("secret-key", site, StringComparison.Ordinal);
        }
    }

    [Fact]
    public async Task Run_now_runs_and_the_backup_stands_on_the_page()
    {
        using var client = Client();
        var asked = await client.PostAsync("/status", new FormUrlEncodedContent([new("job", "backup"), new("site", "")]), TestContext.Current.CancellationToken);
        Assert.Equal("/status?asked", asked.Headers.Location!.ToString());
        // The file is there a moment before the run has ended.
        var status = await UntilAsync(status => Last(status) is not null);
        Assert.Equal("backed-up", Last(status));
        Assert.Single(status["backups"]!.AsArray());

        static string? Last(JsonNode status) =>
            (string?)status["installation"]!.AsArray().First(job => (string?)job!["job"] == "backup")!["last"]?["code"];
    }

    [Theory]
    [InlineData("backup", "demo")]
    [InlineData("sounding", "nowhere")]
    [InlineData("dance", "demo")]
    public async Task A_run_of_nothing_that_exists_is_refused(string job, string site)
    {
        using var client = Client();
        var asked = await client.PostAsync("/status", new FormUrlEncodedContent([new("job", job), new("site", site)]), TestContext.Current.CancellationToken);
        Assert.Equal(HttpStatusCode.BadRequest, asked.StatusCode);
    }

    [Fact]
    public async Task A_flag_is_shown_on_status_page_and_desk()
    {
        _host.Get<FlagStore>().Replace(
            "demo", new(2026, 6, 24), "brief", [new(Days.DeviationKind.TriggerEarly, new(2026, 6, 24, 10, 50, 0, TimeSpan.Zero), 24, 23.6, 40)], _clock.Now);
        using var client = Client();
        foreach (var path in new[] { "/status", "/desk" })
            Assert.Contains("24 °C at 11:50, trigger reached 40 min early.", WebUtility.HtmlDecode(await client.GetStringAsync(path, TestContext.Current.CancellationToken)), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Readers_see_neither_status_nor_settings()
    {
        using var client = _host.Client();
        Assert.Equal(HttpStatusCode.Unauthorized, (await client.GetAsync("/api/v1/status", TestContext.Current.CancellationToken)).StatusCode);
        Assert.NotEqual(HttpStatusCode.OK, (await client.GetAsync("/status", TestContext.Current.CancellationToken)).StatusCode);
        Assert.NotEqual(HttpStatusCode.OK, (await client.GetAsync("/sites/demo/automation", TestContext.Current.CancellationToken)).StatusCode);
    }

    private HttpClient Client()
    {
        var client = _host.Client();
        client.DefaultRequestHeaders.Add("X-Api-Key", Key);
        return client;
    }

    private FormUrlEncodedContent Form(string address, string at = "06:10") => Form(_host.Get<SiteStore>().FindKept("demo")!.Version, address, at);

    private static FormUrlEncodedContent Form(int version, string address, string at = "06:10") => new(
    [
        new("version", $"{version}"),
        new("automation.soundingAddress", address),
        new("automation.station", "99999"),
        new("automation.soundingHourUtc", "0"),
        new("automation.soundingAt", at),
        new("automation.draftAt", "06:30"),
        new("automation.remindAt", "08:00"),
    ]);

    private static string? State(JsonNode status, string job) =>
        (string?)status["sites"]!.AsArray().First(site => (string?)site!["site"] == "demo")!["jobs"]!.AsArray().FirstOrDefault(one => (string?)one!["job"] == job)?["last"]?["state"];

    /// <summary>Asks until the queue has got there.</summary>
    private async Task<JsonNode> UntilAsync(Func<JsonNode, bool> condition)
    {
        using var client = Client();
        JsonNode status = null!;
        await Eventually.TrueAsync(
            async () => condition(status = JsonNode.Parse(await client.GetStringAsync("/api/v1/status", TestContext.Current.CancellationToken))!),
            () => $"does not come: {status}",
            TestContext.Current.CancellationToken);
        return status;
    }
}
