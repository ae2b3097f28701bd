using System.Net;
using System.Text;
using DayBrief.Service.Infrastructure;
using DayBrief.Service.Infrastructure.Journals;
using LiteDB;

namespace DayBrief.Service.Features.Briefs.Revisions;

/// <summary>Whoever writes into the store or the files behind the program's back is found out at the next reading.</summary>
[Collection(OneService.Name)]
public sealed class TamperingTests : IAsyncLifetime
{
    private readonly SetClock _clock = new(new(2026, 5, 21, 6, 0, 0, TimeSpan.Zero));
    private ServiceHost _host = null!;
    private Revision _signed = null!;

    private static CancellationToken Stopping => TestContext.Current.CancellationToken;

    public async ValueTask InitializeAsync()
    {
        _host = ServiceHost.With(_clock);
        var desk = _host.Get<BriefDesk>();
        var sounding = _host.Get<Soundings.SoundingStore>().Save(Encoding.UTF8.GetBytes(Demo.Text("broad-post-frontal.txt")), "demo");
        var made = desk.Make(new()
        {
            SoundingId = sounding.Id,
            Site = _host.Get<Sites.SiteStore>().Find("harrowmere")!,
            Date = new(2026, 5, 21),
            PreparedAt = _clock.Now,
            Assumptions = new() { MaxTemperatureC = 17, Ensemble = 0 },
        });
        _signed = (await _host.Get<Signing>().SignAsync(made.Id!, 1, new("ada", "Ada Invented"), null)).Revision!;
    }

    public ValueTask DisposeAsync() => _host.DisposeAsync();

    [Fact]
    public async Task What_was_signed_passes_also_after_a_restart()
    {
        await ShownAsync(withheld: false);
        Assert.Empty(Check());
        await _host.RestartAsync();
        Assert.Empty(Check());
        await ShownAsync(withheld: false);
    }

    [Fact]
    public async Task A_changed_text_with_the_old_hash_is_withheld()
    {
        Overwrite(_signed.Text.Replace("Ada", "Bob", StringComparison.Ordinal), _signed.Hash);
        Assert.Equal(SignedFault.Text, Assert.Single(Check()).Fault);
        await ShownAsync(withheld: true);
    }

    [Fact]
    public async Task Another_signer_with_a_new_hash_is_withheld()
    {
        var forged = (_signed with { SignedBy = "Bob Invented" }).Sealed();
        Overwrite(forged.Text, forged.Hash);
        Assert.Equal(SignedFault.Signature, Assert.Single(Check()).Fault);
        await ShownAsync(withheld: true);
        await _host.RestartAsync();
        await ShownAsync(withheld: true);
    }

    [Fact]
    public async Task A_brief_that_nobody_signed_is_withheld()
    {
        var forged = (_signed with { BriefId = "forged", Number = 2, PreviousHash = _signed.Hash }).Sealed();
        _host.Get<Database>().Write("revisions", revisions => revisions.Insert(new BsonDocument
        {
            ["_id"] = forged.Id,
            ["brief"] = forged.BriefId,
            ["number"] = 2,
            ["site"] = forged.SiteId,
            ["date"] = forged.Date.DayNumber,
            ["signedAt"] = forged.SignedAt.ToUnixTimeMilliseconds(),
            ["text"] = forged.Text,
            ["hash"] = forged.Hash,
        }));
        Assert.Contains(Check(), finding => finding == new SignedFinding("forged-r2", SignedFault.NotSigned));
        Assert.Equal(HttpStatusCode.Conflict, (await _host.Client().GetAsync("/briefs/forged", Stopping)).StatusCode);
    }

    [Theory]
    [InlineData(".pdf", "pdf")]
    [InlineData(".json", "json")]
    [InlineData(".ascent", "ascent")]
    public async Task Another_file_in_place_of_a_signed_one_is_not_given(string extension, string address)
    {
        var path = _host.Get<PublishedFiles>().PathOf(_signed, extension);
        await File.WriteAllTextAsync(path, "something else", Stopping);
        // The hashes beside it are the forger's to write.
        await File.WriteAllTextAsync(_host.Get<PublishedFiles>().PathOf(_signed, ".sha256"), $"{Revision.HashOf("something else"u8)}  {Path.GetFileName(path)}\n", Stopping);
        Assert.Equal(new SignedFinding(Path.GetFileName(path), SignedFault.File), Assert.Single(Check()));
        var answer = await _host.Client().GetAsync($"/briefs/{_signed.BriefId}/revisions/1/signed.{address}", Stopping);
        Assert.Equal(HttpStatusCode.Conflict, answer.StatusCode);
        Assert.DoesNotContain("something else", await answer.Content.ReadAsStringAsync(Stopping), StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_revision_that_the_store_has_lost_is_found_and_comes_back_at_the_next_start()
    {
        _host.Get<Database>().Write("revisions", revisions => revisions.DeleteAll());
        _host.Get<Database>().Write("dayHeads", heads => heads.DeleteAll());
        _host.Get<Database>().Write("dayPlaces", places => places.DeleteAll());
        Assert.Equal(new SignedFinding(_signed.Id, SignedFault.Missing), Assert.Single(Check()));
        await _host.RestartAsync();
        Assert.Empty(Check());
        await ShownAsync(withheld: false);
    }

    [Fact]
    public void A_line_taken_out_of_the_audit_log_or_put_into_it_is_found_and_the_night_says_so()
    {
        var audit = _host.Get<People.AuditLog>();
        foreach (var about in new[] { "one", "two", "two" })
            audit.Write(null, "Signed a brief", about);
        Assert.Empty(Check());
        _host.Get<Database>().Write("audit", rows => rows.DeleteMany(Query.EQ("about", "one")));
        Assert.Equal(SignedFault.AuditMissing, Assert.Single(Check()).Fault);
        _host.Get<Database>().Write("audit", rows => rows.Insert(new BsonDocument
        {
            ["_id"] = 99L,
            ["at"] = _clock.Now.ToUnixTimeMilliseconds(),
            ["byKey"] = false,
            ["action"] = "Signed a brief",
            ["about"] = "three",
        }));
        Assert.Equal([SignedFault.AuditMissing, SignedFault.AuditForeign], Check().Select(finding => finding.Fault));
        var night = Assert.Throws<Automation.RunFailedException>(() => _host.Get<Automation.Work.BackUp>().Run(
            new(Automation.AutomationJob.Backup, Automation.Slot.Installation, new(2026, 5, 22), "0230Z", _clock.Now)));
        Assert.Contains("audit-missing", night.Result.Figures[0], StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_lost_store_begins_no_trial()
    {
        // Nothing was signed here yet: a signature leaves a line of the audit log too.
        await using var host = new ServiceHost();
        Assert.True(host.Get<People.Trial>().IsOn, "nobody can sign in yet");
        host.Get<People.AuditLog>().Write(new("ada", "Ada Invented", People.Role.Administrator, false), "Signed a brief", "one");
        Assert.False(host.Get<People.Trial>().IsOn);
        await host.RestartAsync();
        Assert.False(host.Get<People.Trial>().IsOn);
    }

    [Fact]
    public void What_is_purged_is_not_missing()
    {
        _host.Get<RevisionStore>().Forget(_signed);
        Assert.Empty(Check());
    }

    [Fact]
    public void A_journal_with_a_changed_line_is_believed_up_to_it_only()
    {
        var folder = new DataFolder(Directory.CreateTempSubdirectory("daybrief-test-").FullName);
        try
        {
            var key = new JournalKey(folder, new string('k', 32));
            var journal = new Journal(folder, key);
            foreach (var id in new[] { "a", "b", "c" })
                journal.Add("signed", id, new() { ["text"] = id });
            var path = Path.Combine(folder.Root, "signed.journal");
            var whole = File.ReadAllText(path);

            Assert.Equal(3, new Journal(folder, key).Entries.Count);
            File.WriteAllText(path, whole.Replace("\"text\":\"b\"", "\"text\":\"x\"", StringComparison.Ordinal));
            Assert.Equal((2, 1), (new Journal(folder, key).BrokenAt, new Journal(folder, key).Entries.Count));

            // A line taken out from the middle shows; lines taken from the end show against a seal kept elsewhere.
            var lines = whole.Split('\n');
            File.WriteAllText(path, $"{lines[0]}\n{lines[2]}\n");
            Assert.Equal(2, new Journal(folder, key).BrokenAt);
            File.WriteAllText(path, $"{lines[0]}\n{lines[1]}\n");
            Assert.False(new Journal(folder, key).Had(journal.Anchor));

            // Another key seals otherwise; a last line cut short by a power cut was told to nobody.
            File.WriteAllText(path, whole);
            Assert.Equal(1, new Journal(folder, new(folder, new string('x', 32))).BrokenAt);
            File.WriteAllText(path, whole[..^5]);
            Assert.Equal((null, 2), (new Journal(folder, key).BrokenAt, new Journal(folder, key).Entries.Count));
            new Journal(folder, key).Add("signed", "d", []);
            Assert.Equal((null, 3), (new Journal(folder, key).BrokenAt, new Journal(folder, key).Entries.Count));
        }
        finally
        {
            Directory.Delete(folder.Root, recursive: true);
        }
    }

    private IReadOnlyList<SignedFinding> Check() => _host.Get<SignedCheck>().Run();

    private void Overwrite(string text, string hash) => _host.Get<Database>().Write("revisions", revisions =>
    {
        var row = revisions.FindById(_signed.Id);
        (row["text"], row["hash"]) = (text, hash);
        revisions.Update(row);
    });

    /// <summary>Page, sheet, JSON and the start page: all give the brief, or none.</summary>
    private async Task ShownAsync(bool withheld)
    {
        using var client = _host.Client();
        client.DefaultRequestHeaders.Accept.ParseAdd("text/html");
        foreach (var address in new[] { "/", $"/briefs/{_signed.BriefId}", $"/briefs/{_signed.BriefId}/sheet", $"/briefs/{_signed.BriefId}/sheet.pdf", $"/api/v1/briefs/{_signed.BriefId}", "/fields/harrowmere" })
        {
            var answer = await client.GetAsync(address, Stopping);
            Assert.Equal(withheld ? HttpStatusCode.Conflict : HttpStatusCode.OK, answer.StatusCode);
            if (!withheld)
                continue;
            var text = WebUtility.HtmlDecode(await answer.Content.ReadAsStringAsync(Stopping));
            Assert.Contains("not what was signed", text, StringComparison.Ordinal);
            Assert.DoesNotContain("Harrowmere", text, StringComparison.Ordinal);
        }
    }
}
