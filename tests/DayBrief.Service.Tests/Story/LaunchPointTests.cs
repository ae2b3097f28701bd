using DayBrief.Service.Features.Actuals;
using DayBrief.Service.Infrastructure;
using Microsoft.Playwright;

namespace DayBrief.Service.Story;

/// <summary>The launch point's phone, far from the clubhouse.</summary>
[Collection(OneService.Name)]
public sealed class LaunchPointTests
{
    [Fact]
    public async Task What_is_written_without_a_connection_waits_on_the_phone_and_is_sent_when_there_is_one()
    {
        await using var host = new ServiceHost();
        await using var phone = await Phone.OpenAsync(host);
        await phone.Page.GotoAsync("/fields/harrowmere/actuals");
        await phone.Page.EvaluateAsync("async () => { await navigator.serviceWorker.ready; }");
        await phone.Page.ReloadAsync();
        Assert.True(await phone.Page.EvaluateAsync<bool>("async () => !!(await (await caches.open('daybrief-writing-1')).match('/fields/harrowmere/actuals'))"));
        await phone.Context.SetOfflineAsync(true);
        await phone.Page.ReloadAsync();
        Assert.DoesNotContain("__RequestVerificationToken", await phone.Page.ContentAsync(), StringComparison.Ordinal);
        await phone.Page.GetByRole(AriaRole.Button, new() { Name = "First thermal: now" }).ClickAsync();
        await phone.Page.FillAsync("#top", "3500");
        await phone.Page.GetByRole(AriaRole.Button, new() { Name = "Write it down" }).ClickAsync();
        await Assertions.Expect(phone.Page.Locator("#queue")).ToHaveTextAsync("2 not sent yet. They are kept on this phone and sent when there is a line.");
        await phone.Page.ReloadAsync();
        await Assertions.Expect(phone.Page.Locator("#unsent li")).ToHaveCountAsync(2);
        Assert.Empty(Kept(host));
        await phone.Context.SetOfflineAsync(false);
        await Assertions.Expect(phone.Page.Locator("#queue")).ToHaveTextAsync("Sent.");
        Assert.Equal([ActualKind.FirstThermal, ActualKind.Seen], Kept(host).Select(entry => entry.Kind).Order().Reverse());
        Assert.Equal(3500 * 0.3048, Kept(host).Single(entry => entry.TopM is not null).TopM!.Value, 6);
        await Assertions.Expect(phone.Page.Locator("#kept")).ToContainTextAsync("top 3500 ft");
    }

    private static IReadOnlyList<Actual> Kept(ServiceHost host)
    {
        var zone = TimeZoneInfo.FindSystemTimeZoneById("Europe/London");
        var today = LocalClock.DateAt(host.Get<TimeProvider>().GetUtcNow(), zone);
        return [.. host.Get<ActualStore>().Between("harrowmere", today.AddDays(-2), today.AddDays(2)).Select(day => day.Entry)];
    }
}
