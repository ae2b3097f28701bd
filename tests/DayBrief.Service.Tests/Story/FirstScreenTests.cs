using System.Net.Http.Json;
using System.Text.Json;
using System.Text.RegularExpressions;
using DayBrief.House;
using Microsoft.Playwright;

namespace DayBrief.Service.Story;

/// <summary>Field, sentence, the worst dangers and the figures stand on the first screen of a phone of 390 × 844, in both languages,
/// on the invented days and on crowded real ascents (soundings/README.md of the reference data) with made METAR and TAF.</summary>
[Collection(OneService.Name)]
public sealed partial class FirstScreenTests(ServiceHost host)
{
    private const int Width = 390, Height = 844;

    private static readonly Dictionary<string, RealDay> Real = new()
    {
        ["norman"] = new(
            "txt_norman_20110522_12z", "2011-05-22", "America/Chicago", 35.18, -97.44, 345, 32,
            "METAR KOUN 221151Z 18012G22KT 9SM SCT014 BKN040 22/21 A2975",
            "TAF KOUN 221130Z 2212/2312 18015G25KT P6SM BKN014 FM221500 18018G28KT P6SM SCT035 FM222000 19020G38KT P6SM SCT040CB PROB30 2220/2224 2SM +TSRAGR BKN025CB FM230100 20012KT P6SM SCT050"),
        ["sao-paulo"] = new(
            "fm35_saopaulo_20230223_12z", "2023-02-23", "America/Sao_Paulo", -23.5, -46.63, 722, 30,
            "METAR SBMT 231100Z 00000KT 3000 BR BKN006 21/20 Q1016",
            "TAF SBMT 230900Z 2312/2324 VRB03KT 4000 BR BKN008 BECMG 2313/2315 33008KT 9999 SCT030 TEMPO 2318/2323 25015G40KT 2000 +TSRA BKN020CB"),
        ["jackson"] = new(
            "fm35_jackson_20060922_12z", "2006-09-22", "America/Chicago", 32.32, -90.08, 91, 31,
            "METAR KJAN 221153Z 17008KT 10SM SCT020 23/21 A2990",
            "TAF KJAN 221130Z 2212/2312 17010KT P6SM SCT020 FM221600 18016G26KT P6SM BKN035 TEMPO 2219/2223 3SM TSRA BKN025CB FM230200 24012G22KT P6SM SCT040"),
        ["sterling"] = new(
            "fm35_sterling_20261006_12z", "2026-10-06", "America/New_York", 38.98, -77.49, 88, 24,
            "METAR KIAD 061152Z 00000KT 1/4SM FG VV002 11/11 A3002",
            "TAF KIAD 061130Z 0612/0712 00000KT 1/4SM FG VV002 FM061400 30008KT P6SM SCT030 FM061700 31014G24KT P6SM SCT045 FM062200 32006KT P6SM SKC"),
        ["idar-oberstein"] = new(
            "bufr_idar_20150712_05z", "2015-07-12", "Europe/Berlin", 49.69, 7.33, 376, 25,
            "METAR ETAR 120520Z 24006KT 9999 FEW020 BKN045 15/13 Q1016",
            "TAF ETAR 120500Z 1206/1306 25008KT 9999 SCT025 BECMG 1209/1211 26015G25KT PROB40 TEMPO 1213/1218 28020G38KT 3000 TSRA BKN015CB"),
    };

    public static TheoryData<string, string> Days
    {
        get
        {
            var days = new TheoryData<string, string>();
            foreach (var day in (string[])["demo-broad", "demo-short", "demo-spread", "demo-thunder", "demo-streets", "demo-stratus", .. Real.Keys])
            {
                days.Add(day, "en");
                days.Add(day, "de");
            }

            return days;
        }
    }

    private static CancellationToken Stopping => TestContext.Current.CancellationToken;

    [Theory]
    [MemberData(nameof(Days))]
    public async Task Day_dangers_and_figures_stand_on_the_first_screen(string day, string language)
    {
        var id = Real.TryGetValue(day, out var real) ? await MadeAsync(real) : day;
        await using var phone = await Phone.OpenAsync(host, Width, height: Height);
        await phone.Page.GotoAsync($"/briefs/{id}?language={language}");
        var ends = await phone.Page.EvaluateAsync<double[]>(
            "() => ['.sentence', '.dangers', '.figures'].map(part => document.querySelector(part)).filter(part => part).map(part => part.getBoundingClientRect().bottom)");
        Assert.Equal(await phone.Page.Locator("#cautions + ul > li").CountAsync() > 0 ? 3 : 2, ends.Length);
        Assert.True(ends[^1] <= Height, $"{day} {language}: the figures end at {ends[^1]:0} px");
        Assert.Equal(ends.Order(), ends);
        await DangersAreWholeAsync(phone.Page);
        Assert.DoesNotMatch("[−-]0([.,]0+)? (°C|kt|ft)", await phone.Page.Locator("main").InnerTextAsync());
    }

    /// <summary>As many as there are, three with a line each, and every serious one of the list below named with them.</summary>
    private static async Task DangersAreWholeAsync(IPage page)
    {
        var all = await page.Locator("#cautions + ul > li").CountAsync();
        Assert.Equal(Math.Min(3, all), await page.Locator(".dangers li").CountAsync());
        var first = all == 0 ? "" : await page.Locator(".dangers").InnerTextAsync();
        foreach (var serious in await page.Locator("#cautions + ul > li.serious strong").AllInnerTextsAsync())
            Assert.Contains(serious.TrimEnd('.'), first, StringComparison.Ordinal);
        // Each of the three has its time before what to do.
        foreach (var when in await page.Locator(".dangers li .when").AllInnerTextsAsync())
            Assert.Matches("[0-9]{2}:[0-9]{2}|all day|ganzen Tag|ganztägig", when);
        if (all <= 3)
            return;
        Assert.Contains($" {all - 3} ", first, StringComparison.Ordinal);
        var others = await page.Locator("#cautions + ul > li.serious").CountAsync() - await page.Locator(".dangers li.serious").CountAsync();
        if (others > 0)
            Assert.Matches($" {all - 3} .*\\b{others} ", await page.Locator(".dangers p").InnerTextAsync());
    }

    public static TheoryData<string, string> FiveAscents =>
        [.. from day in Real.Keys from language in new[] { "en", "de" } select (day, language)];

    /// <summary>When, how high, how strong, what kind, what can hurt me: answered by what is seen without scrolling, by the figures of
    /// the JSON. The sixth, how to centre, in one line within the next screen.</summary>
    [Theory]
    [MemberData(nameof(FiveAscents))]
    public async Task Five_questions_are_answered_on_the_first_screen_and_the_sixth_on_the_second(string day, string language)
    {
        var id = await MadeAsync(Real[day]);
        var json = await host.Client().GetFromJsonAsync<JsonElement>($"/api/v1/briefs/{id}", Stopping);
        await using var phone = await Phone.OpenAsync(host, Width, height: Height);
        await phone.Page.GotoAsync($"/briefs/{id}?language={language}");
        var seen = await phone.Page.EvaluateAsync<string>(
            "() => ['.sentence', '.dangers', '.figures'].map(part => document.querySelector(part)).filter(part => part && part.getBoundingClientRect().bottom <= innerHeight).map(part => part.innerText).join('\\n')");
        var figures = json.GetProperty("figures");
        if (figures.GetProperty("triggerTime").GetString() is { } first)
        {
            Assert.Contains(first[11..16], seen, StringComparison.Ordinal);
            Assert.Contains(figures.GetProperty("lastThermal").GetString()![11..16], seen, StringComparison.Ordinal);
            Assert.Matches($"(?m)^{Regex.Escape(Thousands(figures.GetProperty("usableTopAglM").GetDouble() / 0.3048, language))} ft$", seen);
            Assert.Matches("(?m)^[0-9]+[.,][0-9] kt$", seen);
            Assert.Matches("(?i)thermals|thermik", seen);
            // The line arrives with the computed technique; the page may be put anew meanwhile.
            await phone.Page.WaitForFunctionAsync($"() => document.querySelector('.centring')?.getBoundingClientRect().bottom <= {2 * Height}");
        }

        foreach (var caution in await phone.Page.Locator("#cautions + ul > li.serious strong").AllInnerTextsAsync())
            Assert.Contains(caution.TrimEnd('.'), seen, StringComparison.Ordinal);
    }

    /// <summary>To the nearest hundred feet, as everywhere; worked out here.</summary>
    private static string Thousands(double feet, string language) =>
        (100 * Math.Round(feet / 100)).ToString("#,0", System.Globalization.CultureInfo.InvariantCulture).Replace(",", language == "de" ? "." : ",", StringComparison.Ordinal);

    /// <summary>How to centre today, one screen later at most.</summary>
    [Fact]
    public async Task How_to_centre_stands_in_one_line_within_the_second_screen()
    {
        await using var phone = await Phone.OpenAsync(host, Width, height: Height);
        await phone.Page.GotoAsync("/briefs/demo-thunder");
        await Assertions.Expect(phone.Page.Locator(".centring")).ToBeVisibleAsync();
        // Measured in one step: the page may be put in its place anew between two.
        Assert.InRange(await phone.Page.EvaluateAsync<double>("document.querySelector('.centring').getBoundingClientRect().top"), 0, 2 * Height);
    }

    /// <summary>12:30 UTC is 13:30 in British summer.</summary>
    [Fact]
    public async Task The_hour_that_it_is_now_is_marked()
    {
        await using var signed = new SignedBriefs();
        var id = await signed.SignAsync();
        signed.Clock.Now = new(2026, 5, 21, 12, 30, 0, TimeSpan.Zero);
        var page = await signed.Host.Client().GetStringAsync($"/briefs/{id}", Stopping);
        Assert.StartsWith("13:00", Assert.Single(Marked().Matches(page)).Groups[1].Value, StringComparison.Ordinal);
    }

    private async Task<string> MadeAsync(RealDay day)
    {
        var file = Repository.Shared("soundings", "csv", $"{day.File}.csv");
        var sounding = await PostAsync("/api/v1/soundings", new StringContent(await File.ReadAllTextAsync(file, Stopping), System.Text.Encoding.UTF8, "text/csv"));
        var brief = await PostAsync("/api/v1/briefs", JsonContent.Create(new
        {
            soundingId = sounding.GetProperty("id").GetString(),
            site = new
            {
                id = "crowded",
                name = "Crowded field",
                latitude = day.Latitude,
                longitude = day.Longitude,
                elevationM = day.ElevationM,
                timeZone = day.Zone,
                runways = new[] { new { designator = "12", headingDeg = 120, surface = "grass" }, new { designator = "30", headingDeg = 300, surface = "grass" } },
            },
            date = day.Date,
            preparedBy = "a test",
            observation = day.Metar,
            forecast = day.Taf,
            assumptions = new { maxTemperatureC = day.MaxC },
        }));
        return brief.GetProperty("id").GetString()!;
    }

    private async Task<JsonElement> PostAsync(string path, HttpContent content)
    {
        var answer = await host.Client().PostAsync(path, content, Stopping);
        Assert.True(answer.IsSuccessStatusCode, await answer.Content.ReadAsStringAsync(Stopping));
        return await answer.Content.ReadFromJsonAsync<JsonElement>(Stopping);
    }

    [GeneratedRegex("<tr[^>]*aria-current=\"time\"[^>]*><th scope=\"row\">([^<]*)")]
    private static partial Regex Marked();

    /// <summary>A real ascent with a made report and forecast.</summary>
    private sealed record RealDay(
        string File, string Date, string Zone, double Latitude, double Longitude, double ElevationM, double MaxC, string Metar, string Taf);
}
