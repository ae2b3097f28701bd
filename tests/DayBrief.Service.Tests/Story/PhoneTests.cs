using Microsoft.Playwright;

namespace DayBrief.Service.Story;

/// <summary>The pages in a real browser, at a phone's width and without JavaScript.</summary>
[Collection(OneService.Name)]
public sealed class PhoneTests(ServiceHost host)
{
    [Theory]
    [InlineData(360)]
    [InlineData(320)]
    public async Task No_page_scrolls_sideways_on_a_phone(int width)
    {
        await using var phone = await Phone.OpenAsync(host, width);
        var page = phone.Page;
        foreach (var path in new[] { "/", "/briefs", "/briefs/new", "/briefs/demo-streets", "/briefs/demo-stratus", "/briefs/demo-thunder?units=metric" })
        {
            await page.GotoAsync(path);
            var wide = await page.EvaluateAsync<int>("document.documentElement.scrollWidth");
            Assert.True(wide <= width, $"{path} is {wide} px wide on a screen of {width} px");
        }
    }

    [Fact]
    public async Task An_instructor_makes_a_brief_from_typed_levels_and_reads_it()
    {
        await using var phone = await Phone.OpenAsync(host);
        var page = phone.Page;
        await page.GotoAsync("/briefs/new");
        await page.GetByText("or type the levels").ClickAsync();
        (string P, string T, string D)[] levels = [("1005", "9", "6"), ("985", "11", "5"), ("925", "7", "2"), ("850", "1", "-3"), ("780", "-4", "-9"), ("700", "-7", "-20")];
        for (var i = 0; i < levels.Length; i++)
        {
            await page.FillAsync($"[name=p{i}]", levels[i].P);
            await page.FillAsync($"[name=t{i}]", levels[i].T);
            await page.FillAsync($"[name=d{i}]", levels[i].D);
        }

        await page.FillAsync("#date", "2026-05-21");
        await page.FillAsync("#maxTemperatureC", "17");
        await page.FillAsync("#instructorNote", "Mind the winch cable.");
        await page.GetByText("Keep and show").ClickAsync();
        // Six levels do not say when they were measured: the desk asks, and keeps them.
        await Assertions.Expect(page.Locator("#result")).ToContainTextAsync("Give its time, UTC");
        await page.Locator("#result a[href='#ascentTime']").ClickAsync();
        await page.FillAsync("#ascentTime", "06:00");
        await page.GetByText("Keep and show").ClickAsync();
        await Assertions.Expect(page.Locator("#result h1")).ToHaveTextAsync("Harrowmere (invented)");
        await Assertions.Expect(page.Locator(".figures .value")).ToHaveCountAsync(4);
        await Assertions.Expect(page.Locator("#result").GetByText("Mind the winch cable.")).ToBeVisibleAsync();
    }

    [Theory]
    [InlineData("broad-post-frontal.txt", true)]
    [InlineData("spreading-out.csv", false)]
    public async Task An_instructor_makes_a_brief_from_pasted_text_or_a_file(string ascent, bool pasted)
    {
        await using var phone = await Phone.OpenAsync(host);
        var page = phone.Page;
        await page.GotoAsync("/briefs/new");
        if (pasted)
            await page.FillAsync("#text", Demo.Text(ascent));
        else
            await page.SetInputFilesAsync("#file", Demo.Path(ascent));
        await page.FillAsync("#date", "2026-05-21");
        await page.GetByText("Keep and show").ClickAsync();
        await Assertions.Expect(page.Locator(".figures .value")).ToHaveCountAsync(4);
        await Assertions.Expect(page.GetByText(pasted ? "Read as FM 35 TEMP" : "Read as CSV")).ToBeVisibleAsync();
    }

    [Fact]
    public async Task The_technique_arrives_by_itself_and_the_phone_remembers_the_glider()
    {
        await using var phone = await Phone.OpenAsync(host);
        var page = phone.Page;
        await page.GotoAsync("/briefs/demo-broad");
        await Assertions.Expect(page.GetByText("Finding it")).ToBeVisibleAsync();
        await Assertions.Expect(page.GetByText("Show for me")).ToBeHiddenAsync();
        await page.RunAndWaitForResponseAsync(
            () => page.SelectOptionAsync("#glider", "open"), answer => answer.Url.Contains("glider=open", StringComparison.Ordinal));
        await Assertions.Expect(page.Locator("#glider")).ToHaveValueAsync("open");
        await page.GotoAsync("/briefs/demo-broad");
        await Assertions.Expect(page.Locator("#glider")).ToHaveValueAsync("open");
    }
}
