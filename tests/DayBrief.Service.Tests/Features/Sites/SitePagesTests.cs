using System.Net;
using System.Text.RegularExpressions;
using DayBrief.Service.Features.People;

namespace DayBrief.Service.Features.Sites;

/// <summary>Sites on pages and for programs, as an administrator (by the key of the environment) and as nobody.</summary>
[Collection(OneService.Name)]
public sealed partial class SitePagesTests(SitePagesTests.Administered administered) : IClassFixture<SitePagesTests.Administered>
{
    private readonly ServiceHost _host = administered.Host;
    private readonly HttpClient _admin = administered.Admin;

    private static CancellationToken Stopping => TestContext.Current.CancellationToken;

    [Fact]
    public async Task A_site_is_added_changed_and_deleted_on_its_page()
    {
        var added = await PostAsync("/sites", New("East Field", ("elevation", "400")));
        Assert.Equal("/sites/east-field?kept", added.Headers.Location!.ToString());
        var page = await TextAsync("/sites/east-field");
        Assert.Contains("value=\"400\"", page, StringComparison.Ordinal);
        var changed = await PostAsync("/sites/east-field", New("East Field", ("version", Version(page)), ("elevation", "500"), ("emergencyLine", "112")));
        Assert.Equal(HttpStatusCode.Redirect, changed.StatusCode);
        Assert.Equal("112", _host.Get<SiteStore>().Find("east-field")!.EmergencyLine);
        var gone = await PostAsync("/sites/east-field/delete", new() { ["version"] = "2" });
        Assert.Equal("/sites", gone.Headers.Location!.ToString());
        Assert.Null(_host.Get<SiteStore>().Find("east-field"));
        Assert.Equal(["Deleted a site", "Changed a site", "Added a site"], Audited());
    }

    [Fact]
    public async Task A_refused_page_keeps_what_was_typed_and_tells_it_at_the_field()
    {
        var refused = await PostAsync("/sites", New("Lost?", ("latitude", "95"), ("standingNotes", "typed with care")));
        var page = await refused.Content.ReadAsStringAsync(Stopping);
        Assert.Equal(HttpStatusCode.UnprocessableEntity, refused.StatusCode);
        Assert.Contains("typed with care", page, StringComparison.Ordinal);
        Assert.Matches("id=\"latitude\" name=\"latitude\" value=\"95\"[^>]*aria-invalid=\"true\"", page);
    }

    [Fact]
    public async Task The_second_of_two_administrators_is_told_and_nothing_is_overwritten()
    {
        await PostAsync("/sites", New("Shared"));
        var seen = Version(await TextAsync("/sites/shared"));
        await PostAsync("/sites/shared", New("Shared", ("version", seen), ("emergencyLine", "first")));
        var second = await PostAsync("/sites/shared", New("Shared", ("version", seen), ("emergencyLine", "second")));
        Assert.Equal(HttpStatusCode.Conflict, second.StatusCode);
        Assert.Contains("second", await second.Content.ReadAsStringAsync(Stopping), StringComparison.Ordinal);
        Assert.Equal("first", _host.Get<SiteStore>().Find("shared")!.EmergencyLine);
    }

    [Fact]
    public async Task A_site_with_briefs_is_not_deleted()
    {
        var answer = await _admin.DeleteAsync("/api/v1/sites/harrowmere", Stopping);
        await answer.ProblemAsync(HttpStatusCode.Conflict);
        Assert.Equal(HttpStatusCode.Conflict, (await PostAsync("/sites/harrowmere/delete", new() { ["version"] = "1" })).StatusCode);
        Assert.NotNull(_host.Get<SiteStore>().Find("harrowmere"));
    }

    [Fact]
    public async Task All_sites_go_out_to_one_file_and_come_back_after_a_look()
    {
        await PostAsync("/sites", New("Out", ("emergencyLine", "112")));
        var file = await TextAsync("/sites/export");
        _host.Get<SiteStore>().Remove("out", null);
        var plan = await ImportAsync(file);
        Assert.Contains("new", plan, StringComparison.Ordinal);
        Assert.Null(_host.Get<SiteStore>().Find("out"));
        var taken = await PostAsync("/sites/import", Hidden(plan));
        Assert.Equal("/sites?imported", taken.Headers.Location!.ToString());
        Assert.Equal("112", _host.Get<SiteStore>().Find("out")!.EmergencyLine);
        Assert.Contains("as it is here", await ImportAsync(file), StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_file_with_one_wrong_site_changes_nothing()
    {
        var plan = await ImportAsync("""{"sites":[{"id":"good","latitude":50,"longitude":8,"elevationM":100,"timeZone":"Europe/Berlin"},{"id":"bad","latitude":99,"longitude":8,"elevationM":100,"timeZone":"Europe/Berlin"}]}""");
        Assert.Contains("sites[1].latitude", plan, StringComparison.Ordinal);
        Assert.DoesNotContain("name=\"seen\"", plan, StringComparison.Ordinal);
        Assert.Null(_host.Get<SiteStore>().Find("good"));
    }

    [Fact]
    public async Task A_plan_that_no_longer_fits_is_shown_again_instead_of_taken()
    {
        await PostAsync("/sites", New("Moving"));
        var plan = await ImportAsync("""[{"id":"moving","name":"From the file","latitude":50,"longitude":8,"elevationM":100,"timeZone":"Europe/Berlin"}]""");
        await PostAsync("/sites/moving", New("Moving", ("version", "1"), ("emergencyLine", "meanwhile")));
        Assert.Equal(HttpStatusCode.OK, (await PostAsync("/sites/import", Hidden(plan))).StatusCode);
        Assert.Equal("meanwhile", _host.Get<SiteStore>().Find("moving")!.EmergencyLine);
    }

    [Theory]
    [InlineData("not json")]
    [InlineData("[]")]
    [InlineData("{\"sites\":[null]}")]
    [InlineData("[{\"latitude\":\"north\"}]")]
    public async Task A_file_that_is_none_is_refused_with_words(string content) =>
        Assert.Contains("class=\"error\"", await ImportAsync(content), StringComparison.Ordinal);

    [Fact]
    public async Task Programs_put_read_and_delete_with_versions()
    {
        var json = """{"name":"By program","latitude":50,"longitude":8,"elevationM":100,"timeZone":"Europe/Berlin","limits":{"windKt":25}}""";
        var created = await _admin.PutAsync("/api/v1/sites/program", Demo.Json(json), Stopping);
        await created.JsonAsync(HttpStatusCode.Created);
        Assert.Equal("\"1\"", created.Headers.ETag!.Tag);
        Assert.Equal(25, (await (await _admin.GetAsync("/api/v1/sites/program", Stopping)).JsonAsync(HttpStatusCode.OK)).GetProperty("limits").GetProperty("windKt").GetDouble());
        Assert.Equal(HttpStatusCode.OK, (await PutAsync(json, "\"1\"")).StatusCode);
        await (await PutAsync(json, "\"1\"")).ProblemAsync(HttpStatusCode.PreconditionFailed);
        await (await _admin.PutAsync("/api/v1/sites/Not-Usable", Demo.Json(json), Stopping)).ProblemAsync(HttpStatusCode.BadRequest);
        await (await _admin.PutAsync("/api/v1/sites/program", Demo.Json("""{"latitude":50}"""), Stopping)).ProblemAsync(HttpStatusCode.BadRequest);
        Assert.Equal(HttpStatusCode.NoContent, (await _admin.DeleteAsync("/api/v1/sites/program", Stopping)).StatusCode);
        Assert.Equal(HttpStatusCode.NotFound, (await _admin.GetAsync("/api/v1/sites/program", Stopping)).StatusCode);
    }

    /// <summary>RFC 6585, section 3: 428 for a request that would overwrite what it does not say it has seen; RFC 9110, section
    /// 13.1.1: "*" is met by whatever is there, and not by nothing.</summary>
    [Fact]
    public async Task A_program_that_does_not_say_what_it_has_seen_overwrites_nothing()
    {
        const string path = "/api/v1/sites/program";
        string Json(string line) => $$"""{"name":"By program","latitude":50,"longitude":8,"elevationM":100,"timeZone":"Europe/Berlin","emergencyLine":"{{line}}"}""";
        await (await PutAsync(Json("nothing"), "*")).ProblemAsync(HttpStatusCode.PreconditionFailed);
        Assert.Null(_host.Get<SiteStore>().Find("program"));
        await (await _admin.PutAsync(path, Demo.Json(Json("first")), Stopping)).JsonAsync(HttpStatusCode.Created);
        await (await _admin.PutAsync(path, Demo.Json(Json("silently")), Stopping)).ProblemAsync(HttpStatusCode.PreconditionRequired);
        Assert.Equal("first", _host.Get<SiteStore>().Find("program")!.EmergencyLine);
        await (await PutAsync(Json("knowingly"), "*")).JsonAsync(HttpStatusCode.OK);
        Assert.Equal("knowingly", _host.Get<SiteStore>().Find("program")!.EmergencyLine);
        await _admin.DeleteAsync(path, Stopping);
    }

    [Fact]
    public async Task Nobody_else_sees_or_changes_sites()
    {
        using var nobody = _host.Client();
        Assert.Equal(HttpStatusCode.Redirect, (await nobody.GetAsync("/sites", Stopping)).StatusCode);
        Assert.Equal(HttpStatusCode.Redirect, (await nobody.GetAsync("/sites/export", Stopping)).StatusCode);
        Assert.Equal(HttpStatusCode.Unauthorized, (await nobody.GetAsync("/api/v1/sites", Stopping)).StatusCode);
        Assert.Equal(HttpStatusCode.Unauthorized, (await nobody.PutAsync("/api/v1/sites/x", Demo.Json("{}"), Stopping)).StatusCode);
        Assert.Equal(HttpStatusCode.Unauthorized, (await nobody.DeleteAsync("/api/v1/sites/harrowmere", Stopping)).StatusCode);
    }

    private static Dictionary<string, string> New(string name, params (string Field, string Value)[] others)
    {
        var fields = new Dictionary<string, string>
        {
            ["name"] = name,
            ["typedIn"] = "feet-and-knots",
            ["units"] = "feet-and-knots",
            ["latitude"] = "52.2",
            ["longitude"] = "-1.4",
            ["elevation"] = "400",
            ["timeZone"] = "Europe/London",
            ["usableDepth"] = "2000",
            ["usableClimb"] = "1",
        };
        foreach (var (field, value) in others)
            fields[field] = value;
        return fields;
    }

    private static string Version(string page) => Regex.Match(page, "name=\"version\" value=\"(\\d+)\"").Groups[1].Value;

    private static Dictionary<string, string> Hidden(string page) =>
        HiddenField().Matches(page).ToDictionary(field => field.Groups[1].Value, field => WebUtility.HtmlDecode(field.Groups[2].Value));

    private IEnumerable<string> Audited() =>
        _host.Get<AuditLog>().Between(DateTimeOffset.MinValue, DateTimeOffset.MaxValue).Where(entry => entry.About == "east-field").Select(entry => entry.Action);

    private async Task<HttpResponseMessage> PutAsync(string json, string tag)
    {
        using var request = new HttpRequestMessage(HttpMethod.Put, "/api/v1/sites/program") { Content = Demo.Json(json) };
        request.Headers.IfMatch.ParseAdd(tag);
        return await _admin.SendAsync(request, Stopping);
    }

    private Task<HttpResponseMessage> PostAsync(string address, Dictionary<string, string> fields) =>
        _admin.PostAsync(address, new FormUrlEncodedContent(fields), Stopping);

    private async Task<string> TextAsync(string address) => await _admin.GetStringAsync(address, Stopping);

    private async Task<string> ImportAsync(string content)
    {
        using var form = new MultipartFormDataContent { { new StringContent(content), "file", "sites.json" } };
        return await (await _admin.PostAsync("/sites/import", form, Stopping)).Content.ReadAsStringAsync(Stopping);
    }

    [GeneratedRegex("type=\"hidden\" name=\"(content|seen)\" value=\"([^\"]*)\"")]
    private static partial Regex HiddenField();

    /// <summary>A service with the administrator's key of the environment.</summary>
    public sealed class Administered : IAsyncDisposable
    {
        private const string Key = "0123456789abcdef0123456789abcdef";

        public Administered()
        {
            Admin = Host.Client();
            Admin.DefaultRequestHeaders.Add("X-Api-Key", Key);
        }

        internal ServiceHost Host { get; } = ServiceHost.With(settings: (AdminKey.Variable, Key));

        internal HttpClient Admin { get; }

        public ValueTask DisposeAsync() => Host.DisposeAsync();
    }
}
