using System.Net;
using System.Text.RegularExpressions;

namespace DayBrief.Service.Features.People;

[Collection(OneService.Name)]
public sealed partial class PeoplePageTests : IAsyncLifetime
{
    private const string Chosen = "another few words in a row";

    private readonly ServiceHost _host = new();
    private HttpClient _administrator = null!;

    private static CancellationToken Stopping => TestContext.Current.CancellationToken;

    public async ValueTask InitializeAsync() => _administrator = await _host.SignedInAsync(Role.Administrator, "Ada Invented");

    public ValueTask DisposeAsync() => _host.DisposeAsync();

    [Fact]
    public async Task An_invited_person_chooses_a_password_by_a_link_that_works_once()
    {
        var link = await InviteAsync("Bob Invented", "instructor");
        var bob = _host.Client();
        var accepted = await ChooseAsync(bob, link, Chosen);
        Assert.Equal(HttpStatusCode.Redirect, accepted.StatusCode);
        Assert.Contains("Bob Invented, instructor", await bob.GetStringAsync("/account", Stopping));
        Assert.Equal(HttpStatusCode.OK, (await bob.GetAsync("/briefs/new", Stopping)).StatusCode);
        Assert.Equal(HttpStatusCode.Forbidden, (await bob.GetAsync("/people", Stopping)).StatusCode);
        Assert.Equal(HttpStatusCode.NotFound, (await _host.Client().GetAsync(link, Stopping)).StatusCode);
        Assert.Equal(HttpStatusCode.Redirect, (await SignInAsync("Bob Invented", Chosen)).StatusCode);
    }

    [Fact]
    public async Task The_name_of_another_is_refused_and_what_was_typed_stays()
    {
        var answer = await _administrator.SendFormAsync("/people", "/people", ("name", "ada invented"), ("email", "a@b.example"), ("role", "reader"));
        var page = await answer.TextAsync(HttpStatusCode.UnprocessableEntity);
        Assert.Contains("Somebody has this name already.", page);
        Assert.Contains("value=\"a@b.example\"", page);
    }

    [Theory]
    [InlineData("role")]
    [InlineData("disable")]
    public async Task The_last_administrator_stays_one(string change)
    {
        var id = Id("Ada Invented");
        var answer = await _administrator.SendFormAsync("/people", $"/people/{id}/{change}", ("role", "reader"));
        Assert.Contains("last administrator", await answer.TextAsync(HttpStatusCode.UnprocessableEntity));
        Assert.Equal(HttpStatusCode.OK, (await _administrator.GetAsync("/people", Stopping)).StatusCode);
    }

    [Theory]
    [InlineData("role")]
    [InlineData("disable")]
    public async Task Another_role_or_none_ends_the_sessions(string change)
    {
        var bob = await _host.SignedInAsync(Role.Instructor, "Bob Invented");
        Assert.Equal(HttpStatusCode.OK, (await bob.GetAsync("/briefs/new", Stopping)).StatusCode);
        await _administrator.SendFormAsync("/people", $"/people/{Id("Bob Invented")}/{change}", ("role", "reader"));
        Assert.Equal(HttpStatusCode.Redirect, (await bob.GetAsync("/account", Stopping)).StatusCode);
        var again = await SignInAsync("Bob Invented", ServiceHost.Password);
        Assert.Equal(change == "role" ? HttpStatusCode.Redirect : HttpStatusCode.UnprocessableEntity, again.StatusCode);
    }

    [Fact]
    public async Task Changing_the_password_ends_the_other_sessions_and_not_the_own()
    {
        var other = await _host.SignedInAsync(Role.Instructor, "Bob Invented");
        var own = _host.Client();
        await own.SendFormAsync("/sign-in", "/sign-in", ("name", "Bob Invented"), ("password", ServiceHost.Password));
        var wrong = await own.SendFormAsync("/account", "/account", ("current", "not this one"), ("password", Chosen), ("again", Chosen));
        Assert.Contains("current-error", await wrong.TextAsync(HttpStatusCode.UnprocessableEntity));
        await own.SendFormAsync("/account", "/account", ("current", ServiceHost.Password), ("password", Chosen), ("again", Chosen));
        Assert.Equal(HttpStatusCode.OK, (await own.GetAsync("/account", Stopping)).StatusCode);
        Assert.Equal(HttpStatusCode.Redirect, (await other.GetAsync("/account", Stopping)).StatusCode);
        Assert.Equal(HttpStatusCode.UnprocessableEntity, (await SignInAsync("Bob Invented", ServiceHost.Password)).StatusCode);
    }

    [Fact]
    public async Task A_link_for_a_new_password_ends_the_sessions_when_it_is_used()
    {
        var bob = await _host.SignedInAsync(Role.Instructor, "Bob Invented");
        var answer = await _administrator.SendFormAsync("/people", $"/people/{Id("Bob Invented")}/link");
        var link = Link(await answer.TextAsync(HttpStatusCode.OK));
        Assert.Equal(HttpStatusCode.OK, (await bob.GetAsync("/account", Stopping)).StatusCode);
        Assert.Equal(HttpStatusCode.Redirect, (await ChooseAsync(_host.Client(), link, Chosen)).StatusCode);
        Assert.Equal(HttpStatusCode.Redirect, (await bob.GetAsync("/account", Stopping)).StatusCode);
        Assert.Equal(HttpStatusCode.Redirect, (await SignInAsync("Bob Invented", Chosen)).StatusCode);
    }

    [Fact]
    public async Task A_session_outlives_a_restart()
    {
        await _host.RestartAsync();
        using var moved = new HttpRequestMessage(HttpMethod.Get, new Uri(_host.Address, "/people"));
        Assert.Equal(HttpStatusCode.OK, (await _administrator.SendAsync(moved, Stopping)).StatusCode);
    }

    [Fact]
    public async Task Every_change_is_in_the_audit_log_with_who_made_it_and_without_secrets()
    {
        var link = await InviteAsync("Bob Invented", "reader");
        await _administrator.SendFormAsync("/people", $"/people/{Id("Bob Invented")}/role", ("role", "instructor"));
        await _administrator.SendFormAsync("/people", $"/people/{Id("Bob Invented")}/disable");
        var log = _host.Get<AuditLog>().Between(DateTimeOffset.UnixEpoch, DateTimeOffset.MaxValue);
        Assert.Equal(["Disabled a person", "Changed a role", "Invited a person", "Signed in"], log.Select(entry => entry.Action));
        Assert.All(log, entry => Assert.Equal("Ada Invented", entry.Who));
        Assert.DoesNotContain(log, entry => $"{entry}".Contains(link.Split('=')[1], StringComparison.Ordinal));
    }

    private string Id(string name) => _host.Get<PersonStore>().FindByName(name)!.Id;

    private async Task<string> InviteAsync(string name, string role)
    {
        var answer = await _administrator.SendFormAsync("/people", "/people", ("name", name), ("email", ""), ("role", role));
        return Link(await answer.TextAsync(HttpStatusCode.OK));
    }

    private static string Link(string page) => InPage().Match(page).Value;

    private static Task<HttpResponseMessage> ChooseAsync(HttpClient client, string link, string password) =>
        client.SendFormAsync(link, "/invitation", ("token", link.Split('=')[1]), ("password", password), ("again", password));

    private Task<HttpResponseMessage> SignInAsync(string name, string password) =>
        _host.Client().SendFormAsync("/sign-in", "/sign-in", ("name", name), ("password", password));

    [GeneratedRegex("/invitation\\?token=[A-Za-z0-9_-]{43}")]
    private static partial Regex InPage();
}
