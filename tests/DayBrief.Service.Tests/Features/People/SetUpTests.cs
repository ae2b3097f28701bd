using System.Net;

namespace DayBrief.Service.Features.People;

[Collection(OneService.Name)]
public sealed class SetUpTests
{
    private static readonly DateTimeOffset Morning = new(2026, 5, 21, 6, 0, 0, TimeSpan.Zero);

    private static CancellationToken Stopping => TestContext.Current.CancellationToken;

    [Fact]
    public async Task The_printed_link_makes_the_first_administrator_once()
    {
        await using var host = new ServiceHost();
        var link = Link(host);
        var client = host.Client();
        var made = await SetUpAsync(client, link, ServiceHost.Password);
        Assert.Equal(HttpStatusCode.Redirect, made.StatusCode);
        Assert.Contains("Ada Invented", await client.GetStringAsync("/people", Stopping));
        Assert.Equal(HttpStatusCode.NotFound, (await host.Client().GetAsync(link, Stopping)).StatusCode);
        var audit = host.Get<AuditLog>().Between(DateTimeOffset.UnixEpoch, DateTimeOffset.MaxValue);
        Assert.Equal("Set up the first administrator", Assert.Single(audit).Action);
        await host.RestartAsync();
        Assert.DoesNotContain(host.Log.Lines, line => line.Contains("/set-up", StringComparison.Ordinal));
        Assert.Equal(HttpStatusCode.NotFound, (await host.Client().GetAsync(link, Stopping)).StatusCode);
    }

    [Fact]
    public async Task Each_start_without_people_prints_another_link()
    {
        await using var host = new ServiceHost();
        var first = Link(host);
        await host.RestartAsync();
        var second = Link(host);
        Assert.NotEqual(first, second);
        Assert.Equal(HttpStatusCode.NotFound, (await host.Client().GetAsync(first, Stopping)).StatusCode);
        Assert.Equal(HttpStatusCode.OK, (await host.Client().GetAsync(second, Stopping)).StatusCode);
    }

    [Fact]
    public async Task After_a_day_the_link_works_no_more()
    {
        var clock = new SetClock(Morning);
        await using var host = ServiceHost.With(clock);
        // Printed once the service has started, which is a little after it answers: not before the clock moves on.
        var link = Link(host);
        clock.Now += TimeSpan.FromHours(23.9);
        Assert.Equal(HttpStatusCode.OK, (await host.Client().GetAsync(link, Stopping)).StatusCode);
        clock.Now += TimeSpan.FromHours(0.2);
        Assert.Equal(HttpStatusCode.NotFound, (await host.Client().GetAsync(link, Stopping)).StatusCode);
    }

    [Theory]
    [InlineData("short")]
    [InlineData("elevenchars")]
    [InlineData("aaaaaaaaaaaaaaaaaaaa")]
    [InlineData("Ada  Invented")]
    public async Task A_weak_password_is_refused_beside_its_field_and_nothing_else_is_lost(string password)
    {
        await using var host = new ServiceHost();
        var page = await (await SetUpAsync(host.Client(), Link(host), password)).TextAsync(HttpStatusCode.UnprocessableEntity);
        Assert.Contains("id=\"password-error\"", page);
        Assert.Contains("value=\"Ada Invented\"", page);
        Assert.DoesNotContain(password, page);
        Assert.Equal(HttpStatusCode.Redirect, (await SetUpAsync(host.Client(), Link(host), ServiceHost.Password)).StatusCode);
    }

    [Fact]
    public async Task The_token_stands_in_the_printed_line_and_nowhere_else()
    {
        await using var host = new ServiceHost();
        var token = Link(host).Split('=')[1];
        await SetUpAsync(host.Client(), Link(host), ServiceHost.Password);
        Assert.Single(host.Log.Lines, line => line.Contains(token, StringComparison.Ordinal));
    }

    internal static string Link(ServiceHost host)
    {
        // It is printed when the service has started, which may be a moment after it answers.
        SpinWait.SpinUntil(() => host.Log.Lines.Any(IsLink), Eventually.Limit);
        var line = host.Log.Lines.Single(IsLink);
        return line[line.IndexOf("/set-up", StringComparison.Ordinal)..];
    }

    private static bool IsLink(string line) => line.Contains("/set-up?token=", StringComparison.Ordinal);

    private static Task<HttpResponseMessage> SetUpAsync(HttpClient client, string link, string password) =>
        client.SendFormAsync(link, "/set-up", ("token", link.Split('=')[1]), ("name", "Ada Invented"), ("email", ""), ("password", password), ("again", password));
}
