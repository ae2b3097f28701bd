using System.Net;

namespace DayBrief.Service.Features.People;

[Collection(OneService.Name)]
public sealed class SignInTests : IAsyncLifetime
{
    private ServiceHost _host = null!;

    private static CancellationToken Stopping => TestContext.Current.CancellationToken;

    public ValueTask InitializeAsync()
    {
        _host = ServiceHost.With(settings: ("ForwardedHeaders_Enabled", "true"));
        var person = new NewPerson("Ada Invented", "ada@harrowmere.example").Checked(Role.Instructor, TimeProvider.System.GetUtcNow());
        _host.Get<PersonStore>().Add(person with { PasswordHash = _host.Get<Passwords>().Hash(ServiceHost.Password) });
        return ValueTask.CompletedTask;
    }

    public ValueTask DisposeAsync() => _host.DisposeAsync();

    [Theory]
    [InlineData("Ada Invented")]
    [InlineData(" ada  invented ")]
    [InlineData("ADA@harrowmere.example")]
    public async Task Name_or_address_signs_in_and_the_session_ends_with_signing_out(string name)
    {
        var client = _host.Client();
        Assert.Equal("/account", (await SignInAsync(client, name, ServiceHost.Password, "/account")).Headers.Location!.ToString());
        Assert.Contains("Ada Invented, instructor", await client.GetStringAsync("/account", Stopping));
        await client.SendFormAsync("/account", "/sign-out");
        Assert.Equal(HttpStatusCode.Redirect, (await client.GetAsync("/account", Stopping)).StatusCode);
    }

    [Fact]
    public async Task A_wrong_password_and_an_unknown_name_get_the_same_answer()
    {
        var wrong = await (await SignInAsync(_host.Client(), "Ada Invented", "not this password")).TextAsync(HttpStatusCode.UnprocessableEntity);
        var unknown = await (await SignInAsync(_host.Client(), "Bob Invented", "not this password")).TextAsync(HttpStatusCode.UnprocessableEntity);
        Assert.Equal(Told(wrong), Told(unknown));

        static string Told(string page) => page[page.IndexOf("role=\"alert\"", StringComparison.Ordinal)..page.IndexOf("<form method=\"post\" action=\"/sign-in\"", StringComparison.Ordinal)];
    }

    [Theory]
    [InlineData("https://elsewhere.example/")]
    [InlineData("//elsewhere.example/")]
    [InlineData("/\\elsewhere.example/")]
    [InlineData("javascript:alert(1)")]
    [InlineData("")]
    public async Task Signing_in_leads_to_no_other_host(string returnUrl) =>
        Assert.Equal("/", (await SignInAsync(_host.Client(), "Ada Invented", ServiceHost.Password, returnUrl)).Headers.Location!.ToString());

    [Theory]
    [InlineData("http", false)]
    [InlineData("https", true)]
    public async Task The_cookie_is_kept_from_scripts_and_other_sites_and_on_https_from_http(string scheme, bool secure)
    {
        var client = _host.Client();
        client.DefaultRequestHeaders.Add("X-Forwarded-Proto", scheme);
        // The client does not send a secure cookie back over http, so the token's cookie is carried by hand.
        var page = await client.GetAsync("/sign-in", Stopping);
        var token = page.Headers.TryGetValues("Set-Cookie", out var cookies) ? cookies.Single().Split(';')[0] : "";
        client.DefaultRequestHeaders.Add("Cookie", token);
        var body = await page.Content.ReadAsStringAsync(Stopping);
        var field = body.Split("__RequestVerificationToken\" value=\"")[1].Split('"')[0];
        using var form = new FormUrlEncodedContent([new("name", "Ada Invented"), new("password", ServiceHost.Password), new("__RequestVerificationToken", field)]);
        var answer = await client.PostAsync("/sign-in", form, Stopping);
        var session = answer.Headers.GetValues("Set-Cookie").Single(cookie => cookie.StartsWith(Sessions.Cookie, StringComparison.Ordinal));
        Assert.Contains("httponly", session, StringComparison.OrdinalIgnoreCase);
        Assert.Contains("samesite=lax", session, StringComparison.OrdinalIgnoreCase);
        Assert.DoesNotContain("expires", session, StringComparison.OrdinalIgnoreCase);
        Assert.Equal(secure, session.Contains("secure", StringComparison.OrdinalIgnoreCase));
    }

    [Fact]
    public async Task A_form_that_is_not_ours_is_refused()
    {
        using var form = new FormUrlEncodedContent([new("name", "Ada Invented"), new("password", ServiceHost.Password)]);
        var answer = await _host.Client().PostAsync("/sign-in", form, Stopping);
        Assert.Contains("too old", await answer.TextAsync(HttpStatusCode.BadRequest));
        Assert.False(answer.Headers.Contains("Set-Cookie"));
    }

    [Fact]
    public async Task A_password_hashed_with_fewer_rounds_is_hashed_again_when_it_is_used()
    {
        var people = _host.Get<PersonStore>();
        var old = new Microsoft.AspNetCore.Identity.PasswordHasher<object>(
            Microsoft.Extensions.Options.Options.Create(new Microsoft.AspNetCore.Identity.PasswordHasherOptions { IterationCount = 10_000 })).HashPassword(this, ServiceHost.Password);
        var id = people.All().Single().Id;
        people.Change(id, person => person with { PasswordHash = old });
        Assert.Equal(HttpStatusCode.Redirect, (await SignInAsync(_host.Client(), "Ada Invented", ServiceHost.Password)).StatusCode);
        Assert.NotEqual(old, people.Find(id)!.PasswordHash);
        Assert.Equal(HttpStatusCode.Redirect, (await SignInAsync(_host.Client(), "Ada Invented", ServiceHost.Password)).StatusCode);
    }

    [Fact]
    public async Task One_address_may_not_try_without_end()
    {
        await using var host = ServiceHost.With(settings: (Attempts.Setting, "3"));
        for (var i = 0; i < 3; i++)
            Assert.Equal(HttpStatusCode.UnprocessableEntity, (await SignInAsync(host.Client(), $"name {i}", "not this password")).StatusCode);
        var answer = await SignInAsync(host.Client(), "name 4", "not this password");
        Assert.Contains("too many attempts", await answer.TextAsync(HttpStatusCode.TooManyRequests));
        Assert.Equal(TimeSpan.FromSeconds(60), answer.Headers.RetryAfter!.Delta);
    }

    private static Task<HttpResponseMessage> SignInAsync(HttpClient client, string name, string password, string returnUrl = "/") =>
        client.SendFormAsync("/sign-in", "/sign-in", ("name", name), ("password", password), ("returnUrl", returnUrl));
}
