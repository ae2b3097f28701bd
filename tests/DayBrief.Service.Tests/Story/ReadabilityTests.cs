using Microsoft.Playwright;

namespace DayBrief.Service.Story;

/// <summary>One thumb, sunlight, large letters, a screen reader. Success criteria are of the Web Content Accessibility
/// Guidelines 2.2; the 44 px of a target are those of 2.5.5, more than the 24 px of 2.5.8.</summary>
[Collection(OneService.Name)]
public sealed class ReadabilityTests(ServiceHost host)
{
    private static readonly string[] Pages = ["/", "/briefs/demo-thunder", "/briefs/demo-stratus?language=de", "/briefs/demo-streets?language=de", "/briefs", "/fields/nowhere", "/offline"];

    /// <summary>1.4.4 and 1.4.10: text twice as large on the narrowest phone.</summary>
    [Fact]
    public async Task Text_of_twice_the_size_needs_no_scrolling_sideways_at_320_px()
    {
        await using var phone = await Phone.OpenAsync(host, 320);
        foreach (var path in Pages)
        {
            await LoadAsync(phone, path);
            await phone.Page.EvaluateAsync("document.documentElement.style.fontSize = '200%'");
            var wide = await phone.Page.EvaluateAsync<string[]>(
                """
                () => document.documentElement.scrollWidth <= innerWidth ? []
                  : [...document.querySelectorAll("body *")].filter(it => !it.closest(".scroll, svg") && it.getBoundingClientRect().right > innerWidth + 1).map(it => it.outerHTML.slice(0, 80))
                """);
            Assert.True(wide.Length == 0, $"{path}: {string.Join('\n', wide)}");
        }
    }

    /// <summary>Labels of drawings as the browser sets them: at least 12 px on a common phone and on the narrowest, in both languages.</summary>
    [Theory]
    [InlineData(320)]
    [InlineData(390)]
    public async Task Labels_of_drawings_are_at_least_12_px(int width)
    {
        await using var phone = await Phone.OpenAsync(host, width);
        foreach (var path in new[] { "/briefs/demo-thunder", "/briefs/demo-short?language=de&units=metric" })
        {
            await LoadAsync(phone, path);
            await Assertions.Expect(phone.Page.Locator("svg#plan, figure svg").Nth(1)).ToBeVisibleAsync();
            var small = await phone.Page.EvaluateAsync<string[]>(
                """
                () => [...document.querySelectorAll("main svg text")]
                  .map(it => [it.textContent, parseFloat(getComputedStyle(it).fontSize) * Math.hypot(it.ownerSVGElement.getScreenCTM().a, it.ownerSVGElement.getScreenCTM().b)])
                  .filter(([, size]) => size < 12).map(([text, size]) => `${text}: ${size}`)
                """);
            Assert.True(small.Length == 0, $"{path}: {string.Join('\n', small)}");
            Assert.True(await phone.Page.EvaluateAsync<int>("document.documentElement.scrollWidth") <= width, $"{path} scrolls sideways");
        }
    }

    /// <summary>Links within a sentence are as high as its line, as 2.5.8 allows.</summary>
    [Fact]
    public async Task Every_target_is_large_enough_for_a_thumb()
    {
        await using var phone = await Phone.OpenAsync(host);
        foreach (var path in Pages)
        {
            await LoadAsync(phone, path);
            var small = await phone.Page.EvaluateAsync<string[]>(
                """
                () => [...document.querySelectorAll("a, button, select, input, summary")]
                  .filter(it => it.checkVisibility() && !it.matches(".skip, main p:not(.ways) a, main li a, main li span"))
                  .filter(it => it.getBoundingClientRect().height < 44).map(it => it.outerHTML.slice(0, 80))
                """);
            Assert.True(small.Length == 0, $"{path}: {string.Join('\n', small)}");
        }
    }

    /// <summary>1.1.1, 1.3.1, 2.4.1, 2.4.2, 2.4.6, 3.1.1, 4.1.2, 4.1.3.</summary>
    [Fact]
    public async Task A_screen_reader_finds_landmarks_headings_names_and_headers()
    {
        await using var phone = await Phone.OpenAsync(host);
        foreach (var path in Pages)
        {
            await LoadAsync(phone, path);
            var wrong = await phone.Page.EvaluateAsync<string[]>(
                """
                () => {
                  const all = what => [...document.querySelectorAll(what)], wrong = [];
                  const must = (right, what) => { if (!right) wrong.push(what); };
                  must(document.title, "a title");
                  must(/^(en|de)$/.test(document.documentElement.lang), "a language");
                  must(all("main").length === 1 && all("main h1").length === 1, "one main, one h1");
                  must(all("nav").every(nav => nav.ariaLabel), "named navigation");
                  must(all("a")[0].matches(".skip[href='#main']"), "the way past the links comes first");
                  all("h1, h2, h3, h4").map(head => Number(head.tagName[1])).reduce((before, level) => { must(level <= before + 1, `h${level} after h${before}`); return level; }, 0);
                  for (const svg of all("svg")) must(svg.role === "img" || svg.getAttribute("role") === "img", "a drawing is an image");
                  for (const svg of all("svg")) must(svg.getAttribute("aria-labelledby").split(" ").every(id => document.getElementById(id)?.textContent.length > 5), "a drawing says what it says");
                  for (const table of all("table")) must(table.caption && [...table.querySelectorAll("th")].every(th => th.scope), "a table has caption and headers");
                  for (const field of all("input:not([type=hidden]), select, textarea")) must(field.labels.length === 1 && field.labels[0].textContent.trim(), `a name for ${field.name}`);
                  for (const it of all("a, button")) must(it.textContent.trim(), `a name for ${it.outerHTML}`);
                  const ids = all("[id]").map(it => it.id);
                  must(new Set(ids).size === ids.length, "each id once");
                  must(!all("[tabindex]").some(it => it.tabIndex > 0), "the order of the page is the order of the focus");
                  must(!document.getElementById("copy") || document.getElementById("news").getAttribute("role") === "status", "a place for messages");
                  return wrong;
                }
                """);
            Assert.True(wrong.Length == 0, $"{path}: {string.Join('\n', wrong)}");
        }
    }

    /// <summary>2.4.7 and 2.4.11: whatever has the focus shows it, inside the window. Without script, so that the page is not fetched
    /// anew meanwhile; what happens to the focus then is a test of its own.</summary>
    [Fact]
    public async Task The_focus_goes_through_the_page_from_top_to_bottom_and_is_always_seen()
    {
        await using var phone = await Phone.OpenAsync(host, script: false);
        await LoadAsync(phone, "/briefs/demo-broad");
        var last = -1.0;
        for (var i = 0; i < 25; i++)
        {
            await phone.Page.Keyboard.PressAsync("Tab");
            var at = await phone.Page.EvaluateAsync<double[]>(
                """
                () => {
                  const it = document.activeElement, box = it.getBoundingClientRect();
                  return [box.top + scrollY, parseFloat(getComputedStyle(it).outlineWidth), box.bottom > 0 && box.top < innerHeight ? 1 : 0, it === document.body ? 1 : 0];
                }
                """);
            if (at[3] == 1)
            {
                Assert.True(i > 10, $"only {i} stops");
                return;
            }

            Assert.True(at[1] >= 2 && at[2] == 1, $"stop {i}: outline {at[1]}, in the window {at[2]}");
            Assert.True(at[0] >= last - 60, $"stop {i}: {at[0]} after {last}");
            last = Math.Max(last, at[0]);
        }
    }

    [Fact]
    public async Task Light_and_dark_follow_the_phone_unless_chosen_and_the_choice_comes_with_the_page()
    {
        await using var dark = await Phone.OpenAsync(host, scheme: ColorScheme.Dark, script: false);
        Assert.Equal("rgb(20, 23, 26)", await PaperAsync(dark, "/"));
        await dark.Page.GetByText("For sunlight").ClickAsync();
        Assert.Equal("rgb(255, 255, 255)", await PaperAsync(dark, "/"));
        Assert.Equal("rgb(255, 255, 255)", await PaperAsync(dark, "/briefs"));
        await dark.Page.GetByText("As the phone").ClickAsync();
        Assert.Equal("rgb(20, 23, 26)", await PaperAsync(dark, "/"));
        await using var light = await Phone.OpenAsync(host, script: false);
        Assert.Equal("rgb(255, 255, 255)", await PaperAsync(light, "/"));
        await light.Page.GetByText("Dark", new() { Exact = true }).ClickAsync();
        Assert.Equal("rgb(20, 23, 26)", await PaperAsync(light, "/briefs/demo-short"));
    }

    /// <summary>2.3.3: nothing moves by itself.</summary>
    [Fact]
    public async Task Nothing_moves()
    {
        await using var phone = await Phone.OpenAsync(host);
        await LoadAsync(phone, "/");
        Assert.Empty(await phone.Page.EvaluateAsync<string[]>(
            "() => [...document.querySelectorAll('*')].filter(it => { const style = getComputedStyle(it); return style.animationName !== 'none' || parseFloat(style.transitionDuration) > 0 || style.scrollBehavior === 'smooth'; }).map(it => it.tagName)"));
    }

    [Fact]
    public async Task The_browser_finds_nothing_that_keeps_the_page_from_being_installed()
    {
        await using var phone = await Phone.OpenAsync(host);
        await phone.Page.GotoAsync("/");
        await phone.KeptAsync("/");
        var session = await phone.Context.NewCDPSessionAsync(phone.Page);
        var manifest = await session.SendAsync("Page.getAppManifest");
        Assert.Equal(0, manifest!.Value.GetProperty("errors").GetArrayLength());
        Assert.EndsWith("/manifest.webmanifest", manifest.Value.GetProperty("url").GetString());
        // A private window cannot install anything; that is the only objection left in a test's browser.
        var errors = (await session.SendAsync("Page.getInstallabilityErrors"))!.Value.GetProperty("installabilityErrors").EnumerateArray()
            .Select(error => error.GetProperty("errorId").GetString()).Where(error => error != "in-incognito");
        Assert.Empty(errors);
    }

    private static async Task<string> PaperAsync(Phone phone, string path)
    {
        await phone.Page.GotoAsync(path);
        return await phone.Page.EvaluateAsync<string>("getComputedStyle(document.body).backgroundColor");
    }

    private static async Task LoadAsync(Phone phone, string path)
    {
        await phone.Page.GotoAsync(path);
        await Assertions.Expect(phone.Page.Locator("[data-working]")).ToHaveCountAsync(0);
    }
}
