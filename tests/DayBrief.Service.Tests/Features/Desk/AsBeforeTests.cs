using System.Net;
using System.Text.RegularExpressions;
using DayBrief.Service.Features.Briefs;
using DayBrief.Service.Features.People;

namespace DayBrief.Service.Features.Desk;

/// <summary>Day after day the same field: what stays comes back, what belongs to yesterday does not.</summary>
[Collection(OneService.Name)]
public sealed partial class AsBeforeTests
{
    private static CancellationToken Stopping => TestContext.Current.CancellationToken;

    [Fact]
    public async Task As_yesterday_brings_back_site_runway_cloud_and_notes_and_nothing_of_yesterdays_air()
    {
        var clock = new SetClock(new(2026, 5, 22, 5, 30, 0, TimeSpan.Zero));
        await using var host = ServiceHost.With(clock);
        var ada = await host.SignedInAsync(Role.Instructor, "Ada Invented");
        (string Name, string Value)[] stays =
        [
            ("site", "harrowmere"), ("runway", "24"), ("cloudOktas", "2"), ("cloudFrom0", "13:00"), ("cloudOktas0", "5"), ("instructorNote", "Look at the ground first."),
            ("noteBeforeSolo", "With an instructor."), ("noteLocalSolo", "Within reach of the field."), ("noteCrossCountry", "Call the tower."),
        ];
        (string Name, string Value)[] goes =
        [
            ("text", Demo.Text("broad-post-frontal.txt")), ("maxTemperatureC", "17"), ("windFrom0", "10:00"), ("windDirection0", "240"), ("windSpeed0", "12"), ("qnh", "1021"),
            ("observation", "METAR ZZZZ 210520Z 24006KT 9999 FEW030 10/06 Q1021="), ("judgedTop", "4000"), ("judgedReason", "Cirrus."), ("dayLimits", "No solo after 15:00"), ("validUntil", "18:00"),
        ];
        var made = await ada.SendFormAsync("/briefs/new", "/briefs", [("date", "2026-05-21"), ("groundWetness", "normal"), .. stays, .. goes]);
        Assert.Equal(HttpStatusCode.Redirect, made.StatusCode);
        var link = Begin().Match(WebUtility.HtmlDecode(await ada.GetStringAsync("/desk", Stopping)));
        Assert.Equal("Begin as yesterday", link.Groups[2].Value);
        var page = WebUtility.HtmlDecode(await ada.GetStringAsync(link.Groups[1].Value, Stopping));
        Assert.Contains("Begun as on Thursday 21 May 2026", page);
        foreach (var (name, value) in stays)
            Assert.Matches(name == "site" ? "<option value=\"harrowmere\" selected" : $"name=\"{name}\"[^>]*(value=\"{value}\"|>{value}<)", page);
        foreach (var (name, value) in goes)
            Assert.DoesNotMatch($"name=\"{name}\"[^>]*(value=\"{Regex.Escape(value)}\"|>{Regex.Escape(value)}<)", page);
        Assert.Contains("value=\"2026-05-22\"", page);
    }

    /// <summary>The instructor's own language, whatever the site's readers get.</summary>
    [Fact]
    public async Task The_desk_speaks_the_language_of_whoever_sits_at_it()
    {
        await using var host = new ServiceHost();
        var ada = await host.SignedInAsync(Role.Instructor, "Ada Invented");
        var sites = host.Get<Sites.SiteStore>();
        sites.Save(sites.Find("harrowmere")! with { Language = "en" });
        using var german = new HttpRequestMessage(HttpMethod.Get, "/briefs/new?site=harrowmere");
        german.Headers.Add("Accept-Language", "de-AT,de;q=0.9");
        Assert.Contains("<html lang=\"de\"", await (await ada.SendAsync(german, Stopping)).Content.ReadAsStringAsync(Stopping));
        sites.Save(sites.Find("harrowmere")! with { Language = "de" });
        using var english = new HttpRequestMessage(HttpMethod.Get, "/briefs/new?site=harrowmere");
        english.Headers.Add("Accept-Language", "en");
        Assert.Contains("<html lang=\"en\"", await (await ada.SendAsync(english, Stopping)).Content.ReadAsStringAsync(Stopping));
    }

    [Theory]
    [InlineData("24", HttpStatusCode.Redirect)]
    [InlineData("27", HttpStatusCode.UnprocessableEntity)]
    public async Task A_runway_in_use_is_one_of_the_sites(string runway, HttpStatusCode expected)
    {
        await using var host = new ServiceHost();
        var made = await host.Client().SendFormAsync(
            "/briefs/new", "/briefs", ("site", "harrowmere"), ("date", "2026-05-21"), ("groundWetness", "normal"), ("text", Demo.Text("broad-post-frontal.txt")), ("runway", runway));
        Assert.Equal(expected, made.StatusCode);
        if (expected == HttpStatusCode.Redirect)
        {
            var brief = host.Get<BriefDesk>().OfDraft(host.Get<BriefStore>().Find(made.Headers.Location!.ToString().Split('/')[^1])!)!;
            Assert.Equal("Runway 24, in use", BriefFacts.Of(brief, Reader.Of(brief.Brief.Site)).First(fact => fact.Name.StartsWith("Runway", StringComparison.Ordinal)).Name);
        }
        else
        {
            Assert.Contains("The site has no runway 27; it has 06, 24.", await made.TextAsync(expected));
        }
    }

    [GeneratedRegex("""href="(/briefs/new\?site=harrowmere&like=[^"]+)">([^<]+)<""")]
    private static partial Regex Begin();
}
