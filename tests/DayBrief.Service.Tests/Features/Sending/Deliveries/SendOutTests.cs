using DayBrief.Service.Features.Briefs.Revisions;
using DayBrief.Service.Features.Sending.Mail;
using DayBrief.Service.Features.Sites;

namespace DayBrief.Service.Features.Sending.Deliveries;

/// <summary>Once, only what is new, and whatever happens to the program in between.</summary>
[Collection(OneService.Name)]
public sealed class SendOutTests
{
    private static CancellationToken Stopping => TestContext.Current.CancellationToken;

    [Fact]
    public async Task Nothing_is_sent_until_a_site_switches_it_on_and_then_only_what_is_signed_later()
    {
        await using var server = new CatchingMailServer();
        await using var rig = new SendingRig(SendingRig.MailSettings(server.Port));
        var first = await rig.SignAsync();
        await rig.RunAsync();
        Assert.Empty(rig.Deliveries());
        rig.Clock.Now += TimeSpan.FromMinutes(5);
        rig.SwitchOn(SendingRig.Mail("pilots@club.example"));
        await rig.RunAsync();
        Assert.Empty(rig.Deliveries());
        await rig.AmendAsync(first.BriefId, 12, "cooler");
        await rig.RunAsync();
        await rig.RunAsync();
        Assert.Equal(2, Assert.Single(rig.Deliveries()).Number);
        Assert.Single(server.Messages);
    }

    [Fact]
    public async Task Each_address_gets_its_own_mail_and_sees_no_other()
    {
        await using var server = new CatchingMailServer();
        await using var rig = new SendingRig(SendingRig.MailSettings(server.Port));
        rig.SwitchOn(SendingRig.Mail("one@club.example", "two@club.example"));
        await rig.SignAsync();
        await rig.RunAsync();
        Assert.Equal(["one@club.example", "two@club.example"], server.Messages.Select(caught => Assert.Single(caught.Envelope)).Order());
        Assert.All(server.Messages, caught => Assert.Equal(caught.Envelope[0], Assert.Single(caught.Message.To.Mailboxes).Address));
    }

    /// <summary>Nobody calls the job here: the announcement does.</summary>
    [Fact]
    public async Task Signing_sends_by_itself()
    {
        await using var server = new CatchingMailServer();
        await using var rig = new SendingRig(SendingRig.MailSettings(server.Port));
        rig.SwitchOn(SendingRig.Mail("pilots@club.example"));
        await rig.SignAsync();
        await Eventually.TrueAsync(() => server.Messages.Count == 1, Stopping);
    }

    [Fact]
    public async Task What_was_signed_before_a_restart_is_sent_after_it_once()
    {
        var port = CatchingMailServer.FreePort();
        await using var rig = new SendingRig(SendingRig.MailSettings(port));
        rig.SwitchOn(SendingRig.Mail("pilots@club.example"));
        var revision = await rig.SignAsync();
        await rig.RunAsync();
        Assert.Equal((DeliveryState.Waiting, SendFault.Connection), (rig.Deliveries()[0].State, rig.Deliveries()[0].Fault));
        await rig.Host.RestartAsync();
        await using var server = new CatchingMailServer(port: port);
        await rig.RunAfterAsync(TimeSpan.FromMinutes(1));
        await rig.Host.RestartAsync();
        await rig.RunAfterAsync(TimeSpan.FromHours(2));
        Assert.Equal(revision.BriefId, Assert.Single(rig.Deliveries()).BriefId);
        Assert.Single(server.Messages);
    }

    /// <summary>The program stopped after the revision was kept and before anybody was told.</summary>
    [Fact]
    public async Task A_revision_that_nobody_was_told_of_is_found_after_a_restart()
    {
        await using var server = new CatchingMailServer();
        await using var rig = new SendingRig(SendingRig.MailSettings(server.Port));
        var revision = await rig.SignAsync();
        rig.Clock.Now += TimeSpan.FromMinutes(1);
        rig.SwitchOn(SendingRig.Mail("pilots@club.example"));
        await rig.RunAfterAsync(TimeSpan.FromMinutes(1));
        Assert.Empty(server.Messages);
        var second = (revision with { Number = 2, Reason = "cooler", SignedAt = rig.Clock.Now, PreviousHash = revision.Hash }).Sealed();
        var sheet = rig.Host.Get<PublishedFiles>().Read(revision, ".pdf")!;
        rig.Host.Get<RevisionStore>().Add(second);
        rig.Host.Get<PublishedFiles>().Write(second, [], "", sheet);
        await rig.Host.RestartAsync();
        await rig.RunAsync();
        var delivery = Assert.Single(rig.Deliveries());
        Assert.Equal((2, DeliveryState.Sent, null), (delivery.Number, delivery.State, delivery.Fault));
    }

    [Fact]
    public async Task An_older_notice_that_could_not_be_sent_gives_way_to_the_newer_one()
    {
        var port = CatchingMailServer.FreePort();
        await using var rig = new SendingRig(SendingRig.MailSettings(port));
        rig.SwitchOn(SendingRig.Mail("pilots@club.example"));
        var first = await rig.SignAsync();
        await rig.RunAsync();
        rig.Clock.Now += TimeSpan.FromMinutes(10);
        await rig.AmendAsync(first.BriefId, 12, "cooler");
        await using var server = new CatchingMailServer(port: port);
        await rig.RunAfterAsync(TimeSpan.FromMinutes(2));
        Assert.Equal([DeliveryState.Sent, DeliveryState.Overtaken], rig.Deliveries().Select(delivery => delivery.State));
        Assert.Contains("revision 2", Assert.Single(server.Messages).Message.Subject, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_sheet_that_is_not_the_one_that_was_signed_is_not_sent()
    {
        await using var rig = new SendingRig(SendingRig.MailSettings(CatchingMailServer.FreePort()));
        rig.SwitchOn(SendingRig.Mail("pilots@club.example"));
        var revision = await rig.SignAsync();
        await rig.RunAsync();
        await File.WriteAllBytesAsync(rig.Host.Get<PublishedFiles>().PathOf(revision, ".pdf"), [1, 2, 3], Stopping);
        await rig.RunAfterAsync(TimeSpan.FromMinutes(5));
        Assert.Equal((DeliveryState.Waiting, SendFault.NoSheet), (rig.Deliveries()[0].State, rig.Deliveries()[0].Fault));
    }

    [Fact]
    public async Task An_address_that_was_taken_out_gets_nothing_more()
    {
        await using var rig = new SendingRig(SendingRig.MailSettings(CatchingMailServer.FreePort()));
        rig.SwitchOn(SendingRig.Mail("pilots@club.example"));
        await rig.SignAsync();
        await rig.RunAsync();
        rig.SwitchOn(new SiteSendingJson());
        await rig.RunAfterAsync(TimeSpan.FromMinutes(5));
        Assert.Equal((DeliveryState.Failed, SendFault.TakenOut), (rig.Deliveries()[0].State, rig.Deliveries()[0].Fault));
    }

    /// <summary>The pauses grow, and the last attempt is within seven hours of the first: a brief is for a day.</summary>
    [Fact]
    public void Pauses_grow_and_end()
    {
        var pauses = Enumerable.Range(1, 20).Select(attempt => RetryPauses.After(attempt)).TakeWhile(pause => pause is not null).Select(pause => pause!.Value).ToArray();
        Assert.Equal(RetryPauses.MostAttempts - 1, pauses.Length);
        Assert.Equal(pauses.Order(), pauses);
        Assert.True(pauses.Aggregate(TimeSpan.Zero, (sum, pause) => sum + pause) < TimeSpan.FromHours(7));
        Assert.Equal(TimeSpan.FromMinutes(90), RetryPauses.After(1, TimeSpan.FromMinutes(90)));
        Assert.Equal(TimeSpan.FromHours(2), RetryPauses.After(1, TimeSpan.FromDays(90)));
    }
}
