using System.Net;

namespace DayBrief.Service.Features.People;

[Collection(OneService.Name)]
public sealed class AuditPageTests
{
    private static CancellationToken Stopping => TestContext.Current.CancellationToken;

    /// <summary>London is at UTC+1 in May (IANA time zone database): 23:30 UTC is half past midnight of the next day.</summary>
    [Fact]
    public async Task A_day_is_that_of_the_zone_named_and_the_log_outlives_a_restart()
    {
        var clock = new SetClock(new(2026, 5, 20, 12, 0, 0, TimeSpan.Zero));
        await using var host = ServiceHost.With(clock);
        var client = await host.SignedInAsync(Role.Administrator, "Ada Invented");
        clock.Now = new(2026, 5, 20, 23, 30, 0, TimeSpan.Zero);
        host.Get<AuditLog>().Write(new("1", "Bob Invented", Role.Instructor, ByKey: true), "Signed a brief", "harrowmere", "revision 1");
        await host.RestartAsync();
        client = await SignInAsync(host);
        Assert.DoesNotContain("harrowmere", await client.GetStringAsync("/people/audit?day=2026-05-20&zone=Europe/London", Stopping));
        var london = await client.GetStringAsync("/people/audit?day=2026-05-21&zone=Europe/London", Stopping);
        Assert.Contains("00:30:00", london);
        Assert.Contains("Bob Invented, by key", london);
        Assert.Contains("Times are in Europe/London.", london);
        Assert.Contains("23:30:00", await client.GetStringAsync("/people/audit?day=2026-05-20", Stopping));
    }

    [Theory]
    [InlineData("day=yesterday", "day-error")]
    [InlineData("zone=Nowhere/None", "zone-error")]
    public async Task What_cannot_be_shown_is_told_beside_its_field(string query, string error)
    {
        await using var host = new ServiceHost();
        var client = await host.SignedInAsync(Role.Administrator);
        Assert.Contains(error, await (await client.GetAsync($"/people/audit?{query}", Stopping)).TextAsync(HttpStatusCode.UnprocessableEntity));
    }

    private static async Task<HttpClient> SignInAsync(ServiceHost host)
    {
        var client = host.Client();
        await client.SendFormAsync("/sign-in", "/sign-in", ("name", "Ada Invented"), ("password", ServiceHost.Password));
        return client;
    }
}
