using System.Net;
using System.Security.Cryptography;
using System.Text;
using System.Text.Json;
using System.Text.Json.Nodes;
using DayBrief.Service.Infrastructure;
using UglyToad.PdfPig;

namespace DayBrief.Service.Features.Briefs.Revisions;

[Collection(OneService.Name)]
public sealed class SigningTests : IAsyncLifetime
{
    private const string Key = "a key for the tests that is long enough";

    private readonly SetClock _clock = new(new(2026, 5, 21, 6, 0, 0, TimeSpan.Zero));
    private ServiceHost _host = null!;

    private static CancellationToken Stopping => TestContext.Current.CancellationToken;

    private static Signer Ada => new("ada", "Ada Invented");

    public ValueTask InitializeAsync()
    {
        _host = ServiceHost.With(_clock, ("DAYBRIEF_ADMIN_KEY", Key));
        return ValueTask.CompletedTask;
    }

    public ValueTask DisposeAsync() => _host.DisposeAsync();

    [Fact]
    public async Task Signing_freezes_content_inputs_program_and_hash_and_writes_files_that_sha256sum_would_check()
    {
        var id = await DraftAsync(17);
        var revision = await SignAsync(id);
        Assert.Equal((1, "Ada Invented", _clock.Now), (revision.Number, revision.SignedBy, revision.SignedAt));
        Assert.True(revision.IsIntact);
        Assert.Equal(17, JsonDocument.Parse(revision.Content).RootElement.GetProperty("day").GetProperty("assumptions").GetProperty("maxTemperatureC").GetDouble());
        var sums = await File.ReadAllLinesAsync(Files.PathOf(revision, ".sha256"), Stopping);
        Assert.Equal(4, sums.Length);
        foreach (var line in sums)
        {
            var (sum, name) = (line[..64], line[66..]);
            var content = await File.ReadAllBytesAsync(Path.Combine(Path.GetDirectoryName(Files.PathOf(revision, ".json"))!, name), Stopping);
            Assert.Equal(sum, Convert.ToHexStringLower(SHA256.HashData(content)));
        }

        Assert.Equal(revision.SoundingHash, Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(Demo.Text("broad-post-frontal.txt")))));
        Assert.Contains("Harrowmere", await File.ReadAllTextAsync(Files.PathOf(revision, ".html"), Stopping));
        using var sheet = PdfDocument.Open(Files.PathOf(revision, ".pdf"));
        Assert.Contains("Harrowmere", sheet.GetPage(1).Text);
    }

    [Fact]
    public async Task Signing_the_same_draft_twice_gives_one_revision()
    {
        var id = await DraftAsync(17);
        Assert.Equal((await SignAsync(id)).Hash, (await SignAsync(id)).Hash);
        Assert.Single(Revisions.Of(id));
    }

    [Fact]
    public async Task Signing_a_draft_that_somebody_has_changed_since_signs_nothing()
    {
        var id = await DraftAsync(17);
        Redraft(id, 19);
        var outcome = await _host.Get<Signing>().SignAsync(id, 1, Ada, null);
        Assert.Null(outcome.Revision);
        Assert.Equal(2, outcome.Newer!.Version);
        Assert.Empty(Revisions.Of(id));
    }

    [Fact]
    public async Task An_amendment_needs_a_reason_and_leaves_the_first_revision_as_it_was()
    {
        var id = await DraftAsync(17);
        var first = await SignAsync(id);
        Redraft(id, 19);
        await Assert.ThrowsAsync<InvalidInputException>(() => SignAsync(id));
        _clock.Now = _clock.Now.AddHours(4);
        var second = await SignAsync(id, "warmer than expected");
        Assert.Equal((2, first.Hash), (second.Number, second.PreviousHash));
        Assert.Equal(first.Text, Revisions.Find(id, 1)!.Text);
        Assert.NotEqual(
            _host.Get<BriefDesk>().Find(id, 1)!.Brief.MaxTemperature, _host.Get<BriefDesk>().Find(id)!.Brief.MaxTemperature);
    }

    [Fact]
    public async Task A_changed_record_no_longer_fits_its_hash()
    {
        var revision = await SignAsync(await DraftAsync(17));
        Assert.False(Revision.Open(revision.Text.Replace("Ada", "Bob", StringComparison.Ordinal), revision.Hash).IsIntact);
    }

    [Fact]
    public async Task Signed_revisions_and_their_files_survive_a_restart_and_lost_files_are_written_again()
    {
        var id = await DraftAsync(17);
        var revision = await SignAsync(id);
        foreach (var lost in new[] { ".sha256", ".pdf" })
            File.Delete(Files.PathOf(revision, lost));
        await _host.RestartAsync();
        Assert.Equal(revision.Text, Revisions.Latest(id)!.Text);
        await Eventually.TrueAsync(() => Files.Has(revision) && File.Exists(Files.PathOf(revision, ".pdf")), Stopping);
        Assert.True(_host.Get<BriefDesk>().Find(id)!.Standing!.IsAsSigned, "the restarted program computes what was signed");
    }

    /// <summary>What an earlier version of the program signed is shown as it was signed, whatever this one computes.</summary>
    [Fact]
    public async Task A_brief_that_this_program_computes_otherwise_is_shown_as_it_was_signed()
    {
        var id = await DraftAsync(17);
        var now = await SignAsync(id);
        var earlier = (now with
        {
            BriefId = "earlier",
            Number = 2,
            ProgramVersion = "0.0.1",
            Content = now.Content.Replace("Broad", "Wide", StringComparison.Ordinal),
        }).Sealed();
        Revisions.Add(earlier);
        Files.Write(earlier, [1], "<main id=\"main\"><p>as it was signed</p></main>", [2]);
        var page = await _host.Client().GetStringAsync("/briefs/earlier", Stopping);
        Assert.Contains("as it was signed", page);
        Assert.Contains("by DayBrief 0.0.1", page);
        var json = JsonNode.Parse(await _host.Client().GetStringAsync("/api/v1/briefs/earlier", Stopping))!.AsObject();
        Assert.Equal("amended", (string?)json["standing"]!["state"]);
        json["standing"] = null;
        Assert.Equal(earlier.Content, json.ToJsonString(Json.Line));
    }

    [Fact]
    public async Task A_demonstration_day_cannot_be_signed() =>
        await Assert.ThrowsAsync<InvalidInputException>(() => SignAsync("demo-broad"));

    [Fact]
    public async Task A_program_signs_amends_and_withdraws_by_the_API()
    {
        var id = await DraftAsync(17);
        var client = _host.Client();
        Assert.Equal(HttpStatusCode.Unauthorized, (await client.PostAsync($"/api/v1/briefs/{id}/revisions", Demo.Json("{}"), Stopping)).StatusCode);
        client.DefaultRequestHeaders.Add("X-Api-Key", Key);
        var first = await (await client.PostAsync($"/api/v1/briefs/{id}/revisions", Demo.Json("{}"), Stopping)).JsonAsync(HttpStatusCode.Created);
        Assert.Equal(Revisions.Latest(id)!.Hash, first.GetProperty("sha256").GetString());
        Redraft(id, 19);
        await (await client.PostAsync($"/api/v1/briefs/{id}/revisions", Demo.Json("""{"version":1,"reason":"late"}"""), Stopping)).ProblemAsync(HttpStatusCode.Conflict);
        await (await client.PostAsync($"/api/v1/briefs/{id}/revisions", Demo.Json("{}"), Stopping)).ProblemAsync(HttpStatusCode.BadRequest);
        await (await client.PostAsync($"/api/v1/briefs/{id}/revisions", Demo.Json("""{"reason":"warmer"}"""), Stopping)).JsonAsync(HttpStatusCode.Created);
        var withdrawn = await client.PostAsync($"/api/v1/briefs/{id}/withdrawal", Demo.Json("""{"reason":"front is early"}"""), Stopping);
        Assert.Equal(HttpStatusCode.NoContent, withdrawn.StatusCode);
        var list = await (await _host.Client().GetAsync($"/api/v1/briefs/{id}/revisions", Stopping)).JsonAsync(HttpStatusCode.OK);
        Assert.Equal(2, list.GetArrayLength());
        Assert.Contains("front is early", WebUtility.HtmlDecode(await _host.Client().GetStringAsync($"/briefs/{id}", Stopping)));
    }

    private RevisionStore Revisions => _host.Get<RevisionStore>();

    private PublishedFiles Files => _host.Get<PublishedFiles>();

    private async Task<string> DraftAsync(double maxC)
    {
        var client = _host.Client();
        client.DefaultRequestHeaders.Add("X-Api-Key", Key);
        var sounding = await (await client.PostAsync("/api/v1/soundings", Demo.Plain(Demo.Text("broad-post-frontal.txt")), Stopping)).JsonAsync(HttpStatusCode.Created);
        var made = await client.PostAsync("/api/v1/briefs", Demo.Json($$"""
            { "soundingId": "{{sounding.GetProperty("id").GetString()}}", "site": "harrowmere", "date": "2026-05-21", "preparedBy": "a test",
              "assumptions": { "maxTemperatureC": {{maxC}}, "cloudOktas": 1, "ensemble": 50 } }
            """), Stopping);
        return (await made.JsonAsync(HttpStatusCode.Created)).GetProperty("id").GetString()!;
    }

    private void Redraft(string id, double maxC)
    {
        var inputs = _host.Get<BriefStore>().Find(id)!.Inputs!;
        _host.Get<BriefDesk>().Make(inputs with { Assumptions = inputs.Assumptions with { MaxTemperatureC = maxC } }, id);
    }

    private async Task<Revision> SignAsync(string id, string? reason = null)
    {
        var version = _host.Get<BriefStore>().Find(id)!.Version;
        return (await _host.Get<Signing>().SignAsync(id, version, Ada, reason)).Revision!;
    }
}
