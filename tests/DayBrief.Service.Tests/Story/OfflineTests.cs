using System.Text.RegularExpressions;
using DayBrief.Service.Features.People;
using Microsoft.Playwright;

namespace DayBrief.Service.Story;

/// <summary>One bar of signal, or none: what the phone shows then.</summary>
[Collection(OneService.Name)]
public sealed partial class OfflineTests
{
    [Fact]
    public async Task Without_a_connection_the_copy_says_how_old_it_is_keeps_counting_and_goes_when_the_connection_is_back()
    {
        await using var briefs = new SignedBriefs();
        await using var phone = await Phone.OpenAsync(briefs.Host);
        var id = await briefs.SignAsync();
        await phone.Page.GotoAsync($"/briefs/{id}");
        await phone.KeptAsync($"/briefs/{id}", "/", $"/briefs/{id}/sheet.pdf");
        await Assertions.Expect(phone.Page.Locator("#copy")).ToBeHiddenAsync();
        await phone.Context.SetOfflineAsync(true);
        await phone.Page.Clock.InstallAsync();
        await phone.Page.ReloadAsync();
        await Assertions.Expect(phone.Page.Locator("#copy")).ToHaveTextAsync(ZeroMinutes());
        await Assertions.Expect(phone.Page.Locator(".figures .value")).ToHaveCountAsync(4);
        await phone.Page.Clock.FastForwardAsync("35:00");
        await Assertions.Expect(phone.Page.Locator("#copy")).ToHaveTextAsync("Copy of 08:30, 35 min old. No connection.");
        Assert.Equal("%PDF", await phone.Page.EvaluateAsync<string>($"async () => (await (await fetch('/briefs/{id}/sheet.pdf')).text()).slice(0, 4)"));
        // Another page, whose clock runs as it does.
        var today = await phone.Context.NewPageAsync();
        await today.GotoAsync("/");
        await Assertions.Expect(today.Locator("#copy")).ToContainTextAsync("No connection.");
        await phone.Context.SetOfflineAsync(false);
        await Assertions.Expect(today.Locator("#copy")).ToBeHiddenAsync();
    }

    [Fact]
    public async Task Only_pages_for_readers_are_kept_and_a_page_without_copy_says_so()
    {
        await using var briefs = new SignedBriefs();
        await using var phone = await Phone.OpenAsync(briefs.Host, locale: "de-DE");
        var id = await briefs.SignAsync();
        await phone.Page.GotoAsync($"/briefs/{id}");
        await phone.KeptAsync($"/briefs/{id}", "/");
        foreach (var path in new[] { "/desk", $"/desk/{id}", "/briefs/new", "/briefs", "/sites", "/people", "/sign-in", "/status", $"/briefs/{id}/sheet", "/api/docs" })
            await phone.Page.GotoAsync(path);
        Assert.Equal([$"/briefs/{id}", "/", "/-/choice", $"/briefs/{id}/sheet.pdf"], (await phone.CopiesAsync()).ToHashSet(), SameSet);
        await phone.Context.SetOfflineAsync(true);
        await Assert.ThrowsAnyAsync<PlaywrightException>(() => phone.Page.GotoAsync("/desk"));
        var page = await phone.Context.NewPageAsync();
        await page.GotoAsync("/briefs/demo-short");
        await Assertions.Expect(page.Locator("h1")).ToHaveTextAsync("Keine Verbindung");
    }

    [Fact]
    public async Task Who_has_signed_in_is_not_named_in_a_copy()
    {
        await using var briefs = new SignedBriefs();
        await briefs.Host.SignedInAsync(Role.Instructor, "Bo Invented");
        await using var phone = await Phone.OpenAsync(briefs.Host);
        await phone.Page.GotoAsync("/sign-in");
        await phone.Page.FillAsync("[name=name]", "Bo Invented");
        await phone.Page.FillAsync("[name=password]", ServiceHost.Password);
        await phone.Page.Locator("main button[type=submit]").ClickAsync();
        var id = await briefs.SignAsync();
        await phone.Page.GotoAsync($"/briefs/{id}");
        await Assertions.Expect(phone.Page.GetByText("Bo Invented")).ToBeVisibleAsync();
        await phone.KeptAsync($"/briefs/{id}", "/");
        await phone.Context.SetOfflineAsync(true);
        await phone.Page.ReloadAsync();
        await Assertions.Expect(phone.Page.Locator("#copy")).ToContainTextAsync("No connection.");
        Assert.DoesNotContain("Bo Invented", await phone.Page.ContentAsync());
        Assert.DoesNotContain("__RequestVerificationToken", await phone.Page.ContentAsync());
    }

    [Fact]
    public async Task When_the_network_answers_an_amended_or_withdrawn_brief_never_comes_from_the_copy()
    {
        await using var briefs = new SignedBriefs();
        await using var phone = await Phone.OpenAsync(briefs.Host);
        var id = await briefs.SignAsync();
        await phone.Page.GotoAsync($"/briefs/{id}?units=metric");
        await phone.KeptAsync($"/briefs/{id}", "/", $"/briefs/{id}/sheet.pdf");
        await phone.Page.GotoAsync("/briefs");
        await briefs.AmendAsync(id, 19);
        await phone.Page.GotoAsync($"/briefs/{id}");
        Assert.Equal($"{id}.r2.20260521", await phone.StateAsync());
        await phone.KeptAsync($"/briefs/{id}", "/", $"/briefs/{id}/sheet.pdf");
        Assert.Equal([$"{id}.r2.20260521"], await KeptStatesAsync(phone));
        await phone.Page.GotoAsync("/briefs");
        briefs.Withdraw(id);
        await phone.Page.GotoAsync("/");
        Assert.EndsWith(".withdrawn", await phone.StateAsync());
        Assert.DoesNotContain($"{id}.r2.20260521", await KeptStatesAsync(phone));
    }

    [Fact]
    public async Task The_choice_of_units_and_scheme_holds_without_a_connection()
    {
        await using var briefs = new SignedBriefs();
        await using var phone = await Phone.OpenAsync(briefs.Host);
        var id = await briefs.SignAsync();
        await phone.Page.GotoAsync($"/briefs/{id}?units=metric");
        await phone.KeptAsync($"/briefs/{id}", "/");
        await phone.Page.GotoAsync($"/briefs/{id}?scheme=dark");
        await phone.Context.SetOfflineAsync(true);
        await phone.Page.GotoAsync($"/briefs/{id}");
        await Assertions.Expect(phone.Page.Locator("html")).ToHaveClassAsync("dark");
        await Assertions.Expect(phone.Page.Locator(".figures")).ToContainTextAsync("m/s");
        await phone.Page.GotoAsync($"/briefs/{id}?scheme=sunlight");
        await Assertions.Expect(phone.Page.Locator("html")).ToHaveClassAsync("sunlight");
        await phone.Page.GotoAsync($"/briefs/{id}?units=feet-and-knots");
        await Assertions.Expect(phone.Page.Locator("#copy")).ToContainTextAsync("Another choice needs a connection.");
    }

    /// <summary>Slower than the four seconds that the worker waits, and yet an answer.</summary>
    [Fact]
    public async Task On_a_slow_line_the_copy_comes_first_and_the_answer_takes_its_place()
    {
        await using var briefs = new SignedBriefs();
        await using var phone = await Phone.OpenAsync(briefs.Host);
        var id = await briefs.SignAsync();
        await phone.Page.GotoAsync($"/briefs/{id}");
        await phone.KeptAsync($"/briefs/{id}", "/");
        await phone.Page.GotoAsync("/briefs");
        await briefs.AmendAsync(id, 19);
        var slow = 0;
        await phone.Context.RouteAsync(new Regex($"/briefs/{id}$"), async route =>
        {
            slow++;
            await Task.Delay(7000);
            await route.ContinueAsync();
        });
        await phone.Page.GotoAsync($"/briefs/{id}");
        Assert.SkipWhen(slow == 0, "This browser does not let a test delay what a worker fetches.");
        Assert.Contains(".r1.", await phone.StateAsync());
        await Assertions.Expect(phone.Page.Locator("#copy")).ToContainTextAsync("No connection.");
        await Assertions.Expect(phone.Page.Locator("#copy")).ToHaveAttributeAsync("data-state", $"{id}.r2.20260521");
    }

    private static readonly IEqualityComparer<IEnumerable<string>> SameSet =
        EqualityComparer<IEnumerable<string>>.Create((a, b) => a!.ToHashSet().SetEquals(b!));

    private static async Task<string[]> KeptStatesAsync(Phone phone) => (await phone.Page.EvaluateAsync<string[]>(
        """
        async () => {
          const cache = await caches.open('daybrief-pages-1');
          return Promise.all((await cache.keys()).filter(key => !key.url.endsWith('/-/choice')).map(async key => (await cache.match(key)).headers.get('X-State')));
        }
        """)).Distinct().ToArray();

    [GeneratedRegex(@"^Copy of 08:30, [01] min old\. No connection\.$")]
    private static partial Regex ZeroMinutes();
}
