using System.Text.RegularExpressions;
using Microsoft.Playwright;
using ZXing;
using ZXing.Common;

namespace DayBrief.Service.Story;

/// <summary>The whole day of a duty instructor and a pilot, in a real browser: from the first start to the withdrawn brief.</summary>
[Collection(OneService.Name)]
public sealed partial class DutyDayTests
{
    [Fact]
    public async Task From_the_first_start_to_the_withdrawn_brief()
    {
        await using var host = new ServiceHost();
        await using var laptop = await Phone.OpenAsync(host, width: 1366);
        var desk = laptop.Page;
        await SetUpAsync(desk, host);
        await AddSiteAsync(desk);
        var id = await DraftAsync(desk);
        await desk.GetByText("Sign revision 1").ClickAsync();
        await Assertions.Expect(desk.GetByText("Revision 1, signed")).ToBeVisibleAsync();

        await using var phone = await Phone.OpenAsync(host);
        await phone.Page.GotoAsync("/");
        await Assertions.Expect(phone.Page.Locator("h1")).ToHaveTextAsync("Testing Down");
        await Assertions.Expect(phone.Page.GetByText("No solo after 15:00")).ToBeVisibleAsync();
        await Assertions.Expect(phone.Page.GetByText("Draft: nobody has signed this.")).ToHaveCountAsync(0);
        Assert.Equal(new Uri(host.Address, "/fields/testing-down").ToString(), await ScannedAsync(phone.Context, id));

        await AmendAsync(desk, id);
        await Assertions.Expect(phone.Page.GetByText("Cirrus arrives early.").First).ToBeVisibleAsync();
        await Assertions.Expect(phone.Page.GetByText("What changed from revision 1")).ToBeVisibleAsync();
        await Assertions.Expect(phone.Page.Locator(".figures .value").Nth(1)).ToHaveTextAsync("3,500 ft");

        await phone.KeptAsync("/");
        await phone.Context.SetOfflineAsync(true);
        await phone.Page.ReloadAsync();
        await Assertions.Expect(phone.Page.Locator("#copy")).ToContainTextAsync("No connection.");
        await phone.Context.SetOfflineAsync(false);

        await WithdrawAsync(desk, id);
        await Assertions.Expect(phone.Page.GetByText("Front is early, nobody flies on this.").First).ToBeVisibleAsync();
        await phone.Page.GotoAsync($"/briefs/{id}/sheet");
        await Assertions.Expect(phone.Page.Locator("svg text").Filter(new() { HasText = "WITHDRAWN" }).First).ToBeVisibleAsync();
    }

    private static async Task SetUpAsync(IPage page, ServiceHost host)
    {
        var link = SetUpLink().Match(string.Join("\n", host.Log.Lines));
        Assert.True(link.Success, "the first start prints a set-up link");
        await page.GotoAsync(link.Value);
        await page.FillAsync("[name=name]", "Ada Invented");
        await page.FillAsync("[name=password]", ServiceHost.Password);
        await page.FillAsync("[name=again]", ServiceHost.Password);
        await page.GetByRole(AriaRole.Button, new() { Name = "Set up" }).ClickAsync();
        await Assertions.Expect(page.GetByText("Ada Invented").First).ToBeVisibleAsync();
    }

    private static async Task AddSiteAsync(IPage page)
    {
        await page.GotoAsync("/sites/new");
        await page.FillAsync("[name=name]", "Testing Down");
        await page.FillAsync("[name=latitude]", "52.2");
        await page.FillAsync("[name=longitude]", "-1.4");
        await page.FillAsync("[name=elevation]", "390");
        await page.FillAsync("[name=timeZone]", "Europe/London");
        await page.Locator("main button[type=submit]").First.ClickAsync();
        await page.GotoAsync("/sites");
        await Assertions.Expect(page.GetByText("Testing Down").First).ToBeVisibleAsync();
    }

    /// <summary>Everything is kept as it is entered: no button is pressed.</summary>
    private static async Task<string> DraftAsync(IPage page)
    {
        await page.GotoAsync("/desk");
        await page.Locator("a[href='/briefs/new?site=testing-down']").ClickAsync();
        await page.FillAsync("#text", Demo.Text("broad-post-frontal.txt"));
        await page.FillAsync("#maxTemperatureC", "12");
        await page.FillAsync("#dayLimits", "No solo after 15:00");
        await page.WaitForURLAsync(new Regex("/desk/[0-9a-f]+$"));
        await Assertions.Expect(page.Locator("#result .figures .value")).ToHaveCountAsync(4);
        await Assertions.Expect(page.Locator("#result").GetByText("No solo after 15:00")).ToBeVisibleAsync();
        // What was entered is there after the page is closed and opened again.
        await page.ReloadAsync();
        await Assertions.Expect(page.Locator("#maxTemperatureC")).ToHaveValueAsync("12");
        return page.Url.Split('/')[^1];
    }

    private static async Task AmendAsync(IPage page, string id)
    {
        await page.GotoAsync($"/desk/{id}");
        await page.FillAsync("#judgedTop", "3500");
        await page.FillAsync("#judgedReason", "Cirrus from the west by 13:00.");
        await Assertions.Expect(page.Locator("#result").GetByText("Cirrus from the west by 13:00.")).ToBeVisibleAsync();
        await page.FillAsync("#reason", "Cirrus arrives early.");
        await page.GetByText("Sign revision 2").ClickAsync();
        await Assertions.Expect(page.GetByText("Revision 2, signed")).ToBeVisibleAsync();
    }

    private static async Task WithdrawAsync(IPage page, string id)
    {
        await page.GotoAsync($"/desk/{id}");
        await page.GetByText("Withdraw this brief").ClickAsync();
        await page.FillAsync("#withdraw-reason", "Front is early, nobody flies on this.");
        await page.GetByRole(AriaRole.Button, new() { Name = "Withdraw", Exact = true }).ClickAsync();
        await Assertions.Expect(page.GetByText("Front is early, nobody flies on this.").First).ToBeVisibleAsync();
    }

    /// <summary>What a camera reads from the printed sheet: its picture, through a general library for such codes.</summary>
    private static async Task<string?> ScannedAsync(IBrowserContext context, string id)
    {
        var page = await context.NewPageAsync();
        await page.SetViewportSizeAsync(1000, 1300);
        await page.GotoAsync($"/briefs/{id}/sheet");
        var picture = Convert.ToBase64String(await page.ScreenshotAsync(new() { FullPage = true }));
        await page.GotoAsync("about:blank");
        var pixels = await page.EvaluateAsync<Pixels>("""
            async png => {
              const image = new Image();
              image.src = `data:image/png;base64,${png}`;
              await image.decode();
              const canvas = new OffscreenCanvas(image.width, image.height).getContext('2d');
              canvas.drawImage(image, 0, 0);
              const { data } = canvas.getImageData(0, 0, image.width, image.height);
              let grey = '';
              for (let i = 0; i < data.length; i += 4) grey += String.fromCharCode(data[i + 1]);
              return { width: image.width, height: image.height, grey: btoa(grey) };
            }
            """, picture);
        await page.CloseAsync();
        var source = new RGBLuminanceSource(Convert.FromBase64String(pixels.Grey), pixels.Width, pixels.Height, RGBLuminanceSource.BitmapFormat.Gray8);
        var hints = new Dictionary<DecodeHintType, object> { [DecodeHintType.TRY_HARDER] = true };
        return new MultiFormatReader().decode(new BinaryBitmap(new HybridBinarizer(source)), hints)?.Text;
    }

    [GeneratedRegex(@"https?://\S+/set-up\?token=[\w\-]+")]
    private static partial Regex SetUpLink();

    private sealed record Pixels
    {
        public int Width { get; init; }

        public int Height { get; init; }

        public string Grey { get; init; } = "";
    }
}
