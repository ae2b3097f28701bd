using System.Net;

namespace DayBrief.Service.Features.People;

/// <summary>The lock-out. How many failures and how long the pauses are: common practice, no source.</summary>
[Collection(OneService.Name)]
public sealed class SignInPausesTests : IAsyncLifetime
{
    private readonly SetClock _clock = new(new(2026, 5, 21, 6, 0, 0, TimeSpan.Zero));
    private ServiceHost _host = null!;

    public async ValueTask InitializeAsync()
    {
        _host = ServiceHost.With(_clock);
        await _host.SignedInAsync(Role.Instructor, "Ada Invented");
    }

    public ValueTask DisposeAsync() => _host.DisposeAsync();

    [Fact]
    public async Task Five_failures_pause_the_name_and_a_restart_does_not_help()
    {
        await FailAsync("Ada Invented", 5);
        await PausedAsync("ada invented", 30);
        await _host.RestartAsync();
        await PausedAsync("Ada Invented", 30);
        _clock.Now += TimeSpan.FromSeconds(31);
        Assert.Equal(HttpStatusCode.Redirect, (await SignInAsync("Ada Invented", ServiceHost.Password)).StatusCode);
        await FailAsync("Ada Invented", 4);
        Assert.Equal(HttpStatusCode.Redirect, (await SignInAsync("Ada Invented", ServiceHost.Password)).StatusCode);
    }

    [Fact]
    public async Task An_unknown_name_is_paused_with_the_same_words()
    {
        await FailAsync("Ada Invented", 5);
        await FailAsync("Bob Invented", 5);
        var known = await (await SignInAsync("Ada Invented", "wrong")).TextAsync(HttpStatusCode.TooManyRequests);
        var unknown = await (await SignInAsync("Bob Invented", "wrong")).TextAsync(HttpStatusCode.TooManyRequests);
        Assert.Contains("Try again in 30 s", known);
        Assert.Contains("Try again in 30 s", unknown);
    }

    [Fact]
    public void The_pause_doubles_up_to_a_quarter_of_an_hour()
    {
        var pauses = _host.Get<SignInPauses>();
        for (var i = 0; i < 5; i++)
            Assert.Null(pauses.Begin("a name"));
        foreach (var seconds in new[] { 30, 60, 120, 240, 480, 900, 900 })
        {
            Assert.Equal(seconds, pauses.Left("a name")!.Value.TotalSeconds);
            Assert.NotNull(pauses.Begin("a name"));
            _clock.Now += TimeSpan.FromSeconds(seconds);
            Assert.Null(pauses.Begin("a name"));
        }
    }

    [Fact]
    public void Of_many_attempts_at_once_only_five_get_through()
    {
        var pauses = _host.Get<SignInPauses>();
        var through = 0;
        Parallel.For(0, 40, _ =>
        {
            if (pauses.Begin("a name") is null)
                Interlocked.Increment(ref through);
        });
        Assert.Equal(5, through);
    }

    [Fact]
    public async Task A_pause_is_in_the_audit_log_without_what_was_typed()
    {
        await FailAsync("my secret typed into the wrong field", 5);
        var entry = Assert.Single(_host.Get<AuditLog>().Between(DateTimeOffset.UnixEpoch, _clock.Now.AddDays(1)), entry => entry.Action == "Sign-in paused after failures");
        Assert.Equal("a name nobody has", entry.About);
        Assert.Null(entry.Who);
    }

    private async Task FailAsync(string name, int times)
    {
        for (var i = 1; i <= times; i++)
            Assert.Equal(i < 5 ? HttpStatusCode.UnprocessableEntity : HttpStatusCode.TooManyRequests, (await SignInAsync(name, "wrong")).StatusCode);
    }

    private async Task PausedAsync(string name, int seconds)
    {
        var answer = await SignInAsync(name, ServiceHost.Password);
        Assert.Equal(HttpStatusCode.TooManyRequests, answer.StatusCode);
        Assert.Equal(TimeSpan.FromSeconds(seconds), answer.Headers.RetryAfter!.Delta);
    }

    private Task<HttpResponseMessage> SignInAsync(string name, string password) =>
        _host.Client().SendFormAsync("/sign-in", "/sign-in", ("name", name), ("password", password));
}
