using Microsoft.Playwright;

namespace DayBrief.Service.Story;

/// <summary>What was signed, amended or withdrawn arrives on an open page by itself.</summary>
[Collection(OneService.Name)]
public sealed class LiveTests
{
    /// <summary>Where the heading of the cautions stands in the window.</summary>
    private const string Heading = "document.getElementById('cautions').getBoundingClientRect().top";

    [Fact]
    public async Task The_first_brief_of_the_morning_its_amendment_and_its_withdrawal_arrive_without_being_asked_for()
    {
        await using var briefs = new SignedBriefs();
        await using var phone = await Phone.OpenAsync(briefs.Host);
        await phone.Context.RouteAsync("**/state", route => route.AbortAsync());
        await phone.Page.GotoAsync("/");
        await Assertions.Expect(phone.Page.GetByText("Demonstration:")).ToBeVisibleAsync();
        var id = await briefs.SignAsync();
        await ShowsAsync(phone, $"{id}.r1.20260521");
        await Assertions.Expect(phone.Page.Locator("#main").GetByText("Demonstration:")).ToHaveCountAsync(0);

        await Assertions.Expect(phone.Page.GetByText("Finding it")).ToBeVisibleAsync();
        // The page is fetched once more for the first copy; not to be taken for the amendment.
        await phone.KeptAsync("/");
        var before = await phone.Page.EvaluateAsync<double>($"scrollBy({{ top: {Heading} - 100, behavior: 'instant' }}), {Heading}");
        await briefs.AmendAsync(id, 19);
        await ShowsAsync(phone, $"{id}.r2.20260521");
        Assert.Equal(before, await phone.Page.EvaluateAsync<double>(Heading), tolerance: 3);
        await Assertions.Expect(phone.Page.Locator("#news")).ToContainTextAsync($"Amended 08:30 by Ada Invented: {SignedBriefs.Reason}");
        await phone.Page.Locator("#news a").ClickAsync();
        await Assertions.Expect(phone.Page.Locator("#news")).ToBeHiddenAsync();

        briefs.Withdraw(id);
        await ShowsAsync(phone, $"{id}.r2.20260521.withdrawn");
        await Assertions.Expect(phone.Page.Locator("#news")).ToContainTextAsync("Withdrawn 08:30 by Ada Invented");
        await Assertions.Expect(phone.Page.Locator("#main .banner.warning").First).ToContainTextAsync("Withdrawn");
    }

    [Fact]
    public async Task Where_events_are_blocked_the_page_asks_now_and_then()
    {
        await using var briefs = new SignedBriefs();
        await using var phone = await Phone.OpenAsync(briefs.Host);
        await phone.Context.RouteAsync("**/events", route => route.AbortAsync());
        var id = await briefs.SignAsync();
        await phone.Page.GotoAsync($"/briefs/{id}");
        await briefs.AmendAsync(id, 19);
        await ShowsAsync(phone, $"{id}.r2.20260521");
    }

    [Fact]
    public async Task A_field_without_a_brief_waits_for_it()
    {
        await using var briefs = new SignedBriefs();
        await using var phone = await Phone.OpenAsync(briefs.Host);
        await briefs.SignAsync();
        await phone.Page.GotoAsync("/fields/elsewhere");
        await Assertions.Expect(phone.Page.Locator("h1")).ToHaveTextAsync("No brief yet");
        await briefs.SignAsync("elsewhere");
        await Assertions.Expect(phone.Page.Locator("h1")).ToHaveTextAsync("Field elsewhere");
    }

    [Fact]
    public async Task What_was_chosen_in_a_form_and_the_focus_survive_a_change()
    {
        await using var briefs = new SignedBriefs();
        await using var phone = await Phone.OpenAsync(briefs.Host);
        var id = await briefs.SignAsync();
        await phone.Page.GotoAsync($"/briefs/{id}");
        await phone.Page.SelectOptionAsync("#glider", "open");
        await phone.Page.FocusAsync("#experience");
        await briefs.AmendAsync(id, 19);
        await ShowsAsync(phone, $"{id}.r2.20260521");
        await Assertions.Expect(phone.Page.Locator("#glider")).ToHaveValueAsync("open");
        await Assertions.Expect(phone.Page.Locator("#experience")).ToBeFocusedAsync();
    }

    private static Task ShowsAsync(Phone phone, string state) =>
        Assertions.Expect(phone.Page.Locator("#copy")).ToHaveAttributeAsync("data-state", state);
}
