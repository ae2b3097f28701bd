using System.Net;
using System.Text.RegularExpressions;

namespace DayBrief.Service.Features.People;

[Collection(OneService.Name)]
public sealed partial class ApiKeyTests : IAsyncLifetime
{
    private readonly SetClock _clock = new(new(2026, 5, 21, 6, 0, 0, TimeSpan.Zero));
    private ServiceHost _host = null!;
    private HttpClient _administrator = null!;

    private static CancellationToken Stopping => TestContext.Current.CancellationToken;

    public async ValueTask InitializeAsync()
    {
        _host = ServiceHost.With(_clock);
        _administrator = await _host.SignedInAsync(Role.Administrator, "Ada Invented");
    }

    public ValueTask DisposeAsync() => _host.DisposeAsync();

    [Fact]
    public async Task A_key_is_shown_once_works_from_anywhere_and_is_not_in_the_data()
    {
        var key = await MakeAsync("the logger", "prepare", "30");
        Assert.DoesNotContain(key, await _administrator.GetStringAsync("/people/keys", Stopping));
        await (await SendAsync(key, "/api/v1/soundings")).JsonAsync(HttpStatusCode.Created);
        var page = await _administrator.GetStringAsync("/people/keys", Stopping);
        Assert.Contains("the logger", page);
        Assert.Contains("last used Thu 21 May 2026 06:00", page);
        await _host.RestartAsync();
        await (await SendAsync(key, "/api/v1/soundings")).JsonAsync(HttpStatusCode.Created);
        Assert.Equal(Secret.Hash(key), Assert.Single(_host.Get<ApiKeyStore>().All()).Hash);
    }

    [Fact]
    public async Task An_expired_a_revoked_and_an_unknown_key_are_refused_with_the_reason()
    {
        var (expiring, revoked) = (await MakeAsync("one", "prepare", "30"), await MakeAsync("two", "prepare", ""));
        await _administrator.SendFormAsync("/people/keys", $"/people/keys/{_host.Get<ApiKeyStore>().FindBySecret(revoked)!.Id}/revoke");
        _clock.Now += TimeSpan.FromDays(30);
        foreach (var (key, why) in new[] { (expiring, "expired"), (revoked, "revoked"), ("daybrief_unknown", "not known") })
        {
            var errors = await (await SendAsync(key, "/api/v1/soundings")).ProblemAsync(HttpStatusCode.Unauthorized);
            Assert.Equal("X-Api-Key", errors[0].GetProperty("field").GetString());
            Assert.Contains(why, errors[0].GetProperty("detail").GetString());
        }
    }

    [Theory]
    [InlineData("prepare", HttpStatusCode.Created, HttpStatusCode.Forbidden)]
    [InlineData("sign", HttpStatusCode.Created, HttpStatusCode.Forbidden)]
    [InlineData("administer", HttpStatusCode.Created, HttpStatusCode.OK)]
    public async Task A_scope_covers_what_it_says(string scope, HttpStatusCode preparing, HttpStatusCode administering)
    {
        var key = await MakeAsync(scope, scope, "30");
        Assert.Equal(preparing, (await SendAsync(key, "/api/v1/soundings")).StatusCode);
        using var request = new HttpRequestMessage(HttpMethod.Get, "/people");
        request.Headers.Add("X-Api-Key", key);
        Assert.Equal(administering, (await _host.Client().SendAsync(request, Stopping)).StatusCode);
    }

    [Fact]
    public async Task The_description_names_the_header_and_the_routes_that_ask_for_it()
    {
        var description = await (await _host.Client().GetAsync("/api/openapi.json", Stopping)).JsonAsync(HttpStatusCode.OK);
        var scheme = description.GetProperty("components").GetProperty("securitySchemes").GetProperty("X-Api-Key");
        Assert.Equal("apiKey", scheme.GetProperty("type").GetString());
        Assert.Equal("header", scheme.GetProperty("in").GetString());
        var paths = description.GetProperty("paths");
        foreach (var path in new[] { "/api/v1/soundings", "/api/v1/briefs" })
            Assert.True(paths.GetProperty(path).GetProperty("post").GetProperty("security")[0].TryGetProperty("X-Api-Key", out _), path);
        Assert.False(paths.GetProperty("/api/v1/analyses").GetProperty("post").TryGetProperty("security", out _));
    }

    private async Task<string> MakeAsync(string name, string scope, string days)
    {
        var answer = await _administrator.SendFormAsync("/people/keys", "/people/keys", ("name", name), ("scope", scope), ("days", days));
        return InPage().Match(await answer.TextAsync(HttpStatusCode.OK)).Value;
    }

    private async Task<HttpResponseMessage> SendAsync(string key, string path)
    {
        using var request = new HttpRequestMessage(HttpMethod.Post, path) { Content = Demo.Plain(Demo.Text("broad-post-frontal.txt")) };
        request.Headers.Add("X-Api-Key", key);
        request.Headers.Add("X-Forwarded-For", "203.0.113.7");
        return await _host.Client().SendAsync(request, Stopping);
    }

    [GeneratedRegex("daybrief_[A-Za-z0-9_-]{43}")]
    private static partial Regex InPage();
}
