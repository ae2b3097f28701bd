using System.Net;
using DayBrief.Service.Features.People;
using DayBrief.Service.Features.Sending.Deliveries;
using DayBrief.Service.Features.Sites;
using DayBrief.Service.Infrastructure;
using LiteDB;

namespace DayBrief.Service.Features.Briefs.Revisions;

/// <summary>What is signed, its line of the audit log and what follows from it are kept together; what follows is done at least once
/// and doubles nothing.</summary>
[Collection(OneService.Name)]
public sealed class OutboxTests
{
    private const string Site = "harrowmere";

    private static CancellationToken Stopping => TestContext.Current.CancellationToken;

    [Fact]
    public async Task A_folder_of_plain_files_that_cannot_be_written_loses_nothing_and_is_shown_and_done_again()
    {
        await using var signed = new SignedBriefs();
        using var instructor = await signed.Host.SignedInAsync(Role.Instructor, "Ada Invented");
        var draft = Draft(signed);
        // A file where the folder should be: also whoever may write anywhere cannot make the folder.
        var folder = Path.Combine(signed.Host.Get<DataFolder>().Root, "published");
        await File.WriteAllTextAsync(folder, "in the way", Stopping);
        var answer = await instructor.SendFormAsync($"/desk/{draft}", $"/desk/{draft}/sign", ("version", "1"));
        Assert.Equal(HttpStatusCode.Redirect, answer.StatusCode);
        Assert.Equal(1, signed.Host.Get<RevisionStore>().Latest(draft)!.Number);
        Assert.Single(Lines(signed), line => line is { Action: "Signed a brief", Who: "Ada Invented" } && line.About == draft);
        var waiting = Assert.Single(signed.Host.Get<Outbox>().Waiting());
        Assert.Equal((Follower.Files, 1), (waiting.Follower, waiting.Failures));
        Assert.NotNull(waiting.Fault);
        Assert.Contains("has not worked, and is tried again", await instructor.GetStringAsync("/status?language=en", Stopping), StringComparison.Ordinal);
        File.Delete(folder);
        var again = await instructor.SendFormAsync("/status", "/status/signatures", ("entry", waiting.Id));
        Assert.Equal(HttpStatusCode.Redirect, again.StatusCode);
        Assert.True(signed.Host.Get<PublishedFiles>().Has(signed.Host.Get<RevisionStore>().Latest(draft)!), "the files are there");
        Assert.Empty(signed.Host.Get<Outbox>().Waiting());
    }

    /// <summary>The disk as a kill right after the commit leaves it: the three are kept, nothing of what follows was done.</summary>
    [Fact]
    public async Task What_a_kill_between_signature_and_delivery_left_follows_at_the_next_start()
    {
        await using var signed = new SignedBriefs();
        var sites = signed.Host.Get<SiteStore>();
        sites.Save(sites.Find(Site)! with { Sending = new() { MailTo = ["pilots@example.org"] } });
        var first = signed.Host.Get<RevisionStore>().Find(await signed.SignAsync(), 1)!;
        var late = (first with { BriefId = "late", Number = 2, SignedAt = first.SignedAt.AddMinutes(1) }).Sealed();
        var told = new Announcement(AnnouncementKind.Amended, "late", late.SiteId, late.Date, 2, "Ada Invented", late.SignedAt);
        signed.Host.Get<RevisionStore>().Add(late, collection => Outbox.Put(collection, told));
        Assert.False(signed.Host.Get<PublishedFiles>().Has(late), "no files yet");
        Assert.Equal(4, signed.Host.Get<Outbox>().Waiting().Count);
        signed.Clock.Now += TimeSpan.FromMinutes(2);
        await signed.Host.RestartAsync();
        await Eventually.TrueAsync(() => signed.Host.Get<Outbox>().Waiting().Count == 0, Stopping);
        Assert.True(signed.Host.Get<PublishedFiles>().Has(late), "the files are there");
        Assert.Single(signed.Host.Get<DeliveryLedger>().Latest(Site, 100), delivery => delivery.BriefId == "late");
    }

    [Fact]
    public async Task What_is_done_again_doubles_nothing()
    {
        await using var signed = new SignedBriefs();
        var sites = signed.Host.Get<SiteStore>();
        sites.Save(sites.Find(Site)! with { Sending = new() { MailTo = ["pilots@example.org"] } });
        await signed.SignAsync();
        foreach (var entry in signed.Host.Get<Outbox>().Latest(10))
            await signed.Host.Get<FollowUp>().AgainAsync(entry);
        Assert.Equal(4, signed.Host.Get<Outbox>().Latest(10).Count(entry => entry.IsDone));
        Assert.Single(signed.Host.Get<DeliveryLedger>().Latest(Site, 100));
    }

    [Fact]
    public async Task A_signature_that_is_refused_leaves_neither_line_nor_anything_to_follow()
    {
        await using var signed = new SignedBriefs();
        var first = signed.Host.Get<RevisionStore>().Find(await signed.SignAsync(), 1)!;
        var (lines, entries) = (Lines(signed).Count, signed.Host.Get<Outbox>().Latest(100).Count);
        var late = (first with { BriefId = "late" }).Sealed();
        Assert.Throws<LiteException>(() => signed.Host.Get<RevisionStore>().Add(late, Along));
        Assert.Equal((lines, entries), (Lines(signed).Count, signed.Host.Get<Outbox>().Latest(100).Count));
        // And what fails in the same write takes the revision with it.
        var third = (first with { BriefId = "third", Number = 2 }).Sealed();
        Assert.Throws<InvalidOperationException>(() => signed.Host.Get<RevisionStore>().Add(third, collection =>
        {
            Along(collection);
            throw new InvalidOperationException("the disk is full");
        }));
        Assert.Null(signed.Host.Get<RevisionStore>().Find("third", 2));
        Assert.Equal(entries, signed.Host.Get<Outbox>().Latest(100).Count);

        void Along(Func<string, ILiteCollection<BsonDocument>> collection) =>
            Outbox.Put(collection, new(AnnouncementKind.Amended, "late", Site, first.Date, 1, "Ada Invented", first.SignedAt));
    }

    private static IReadOnlyList<AuditEntry> Lines(SignedBriefs signed) =>
        signed.Host.Get<AuditLog>().Between(DateTimeOffset.UnixEpoch, signed.Clock.Now.AddDays(1));

    private static string Draft(SignedBriefs signed)
    {
        var invented = signed.Host.Get<BriefStore>().Find(DemonstrationDays.First)!.Inputs!;
        var made = signed.Host.Get<BriefDesk>().Make(invented with { Demonstration = false, PreparedBy = "Ada Invented", PreparedAt = signed.Clock.Now });
        return made.Id!;
    }
}
