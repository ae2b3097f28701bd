using Microsoft.Playwright;

namespace DayBrief.Service.Story;

/// <summary>The instructor changes his mind at the desk, in a real browser, without pressing a button: what he gave or picked last is
/// what is computed, and beside it stands all that the pilots will see.</summary>
[Collection(OneService.Name)]
public sealed class DeskAscentTests
{

    [Fact]
    public async Task Pasted_then_a_file_then_a_maximum_then_picked_back_is_computed_from_the_ascent_that_is_meant()
    {
        await using var host = new ServiceHost();
        await using var laptop = await Phone.OpenAsync(host, width: 1366);
        var page = laptop.Page;
        await page.GotoAsync("/briefs/new?site=harrowmere");
        await page.FillAsync("#date", "2026-06-24");
        await page.FillAsync("#text", Demo.Text("broad-post-frontal.txt"));
        await UsedAsync(page, "Station 99001");

        await page.SetInputFilesAsync("#file", Demo.Path("anticyclone-short-dry.csv"));
        await UsedAsync(page, "Station Stonefold");
        await Assertions.Expect(page.Locator("#ascents [role=status]")).ToContainTextAsync("because it was given last");
        await page.FillAsync("#maxTemperatureC", "25");
        await Assertions.Expect(page.Locator("#result").GetByText("25 °C").First).ToBeVisibleAsync(new() { Timeout = 60_000 });
        await UsedAsync(page, "Station Stonefold");
        await Assertions.Expect(page.Locator("#not-used")).ToContainTextAsync("the pasted text, Station 99001");

        await page.Locator("#ascents input[value=text]").CheckAsync();
        await UsedAsync(page, "Station 99001");
        await Assertions.Expect(page.Locator("#not-used")).ToContainTextAsync("anticyclone-short-dry.csv");
        await Assertions.Expect(page.Locator("#result #fly")).ToBeVisibleAsync();
        await Assertions.Expect(page.Locator("#result")).ToContainTextAsync("Centring it", new() { Timeout = 120_000 });
    }

    private static Task UsedAsync(IPage page, string words) =>
        Assertions.Expect(page.Locator("#ascents label", new() { HasText = "In use:" })).ToContainTextAsync(words, new() { Timeout = 60_000 });
}
