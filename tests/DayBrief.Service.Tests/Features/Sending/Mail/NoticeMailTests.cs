using DayBrief.Service.Features.Briefs.Revisions;
using DayBrief.Service.Features.Sites;
using MimeKit;

namespace DayBrief.Service.Features.Sending.Mail;

/// <summary>What is mailed, as a real server takes it and MimeKit reads it back.</summary>
[Collection(OneService.Name)]
public sealed class NoticeMailTests : IAsyncLifetime
{
    private readonly CatchingMailServer _server = new();
    private SendingRig _rig = null!;

    public ValueTask InitializeAsync()
    {
        _rig = new(SendingRig.MailSettings(_server.Port, ("DayBrief:PublicAddress", "https://brief.field.example/")));
        return ValueTask.CompletedTask;
    }

    public async ValueTask DisposeAsync()
    {
        await _rig.DisposeAsync();
        await _server.DisposeAsync();
    }

    [Fact]
    public async Task A_signed_brief_is_mailed_as_text_and_HTML_with_the_very_sheet_that_was_signed()
    {
        _rig.SwitchOn(SendingRig.Mail("pilots@club.example"));
        var revision = await _rig.SignAsync();
        await _rig.RunAsync();
        var mail = Assert.Single(_server.Messages).Message;
        Assert.Equal("Harrowmere (invented), Thursday 21 May 2026: brief, revision 1", mail.Subject);
        Assert.Equal(("brief@field.example", "pilots@club.example"), (mail.From.Mailboxes.Single().Address, mail.To.Mailboxes.Single().Address));
        foreach (var body in new[] { mail.TextBody, mail.HtmlBody })
        {
            foreach (var part in new[] { "thermals", "Trigger", "Usable top", "Climb", "Last thermal", "Ada Invented", "Advice only", $"https://brief.field.example/briefs/{revision.BriefId}" })
                Assert.Contains(part, body, StringComparison.Ordinal);
        }

        var sheet = Assert.IsType<MimePart>(Assert.Single(mail.Attachments));
        Assert.Equal(("application/pdf", "harrowmere-2026-05-21-r1.pdf"), (sheet.ContentType.MimeType, sheet.FileName));
        using var bytes = new MemoryStream();
        await sheet.Content!.DecodeToAsync(bytes, TestContext.Current.CancellationToken);
        Assert.Equal(_rig.Host.Get<PublishedFiles>().Read(revision, ".pdf"), bytes.ToArray());
    }

    /// <summary>RFC 2919 (List-Id), RFC 3834 (Auto-Submitted), RFC 5322, 3.6.4 (threads).</summary>
    [Fact]
    public async Task An_amendment_says_what_changed_and_why_and_hangs_on_the_mail_before()
    {
        _rig.SwitchOn(SendingRig.Mail("pilots@club.example"));
        var first = await _rig.SignAsync();
        await _rig.RunAsync();
        await _rig.AmendAsync(first.BriefId, 12, "more cloud than expected");
        await _rig.RunAsync();
        _rig.Clock.Now += TimeSpan.FromHours(1);
        _rig.Withdraw(first.BriefId, "front is early");
        await _rig.RunAsync();
        var mails = _server.Messages.Select(caught => caught.Message).ToArray();
        Assert.Equal(3, mails.Length);
        Assert.Equal("Harrowmere (invented), Thursday 21 May 2026: brief amended, revision 2", mails[1].Subject);
        Assert.Contains("Why: more cloud than expected", mails[1].TextBody, StringComparison.Ordinal);
        Assert.Contains("What changed:", mails[1].TextBody, StringComparison.Ordinal);
        Assert.Contains("Usable top", mails[1].TextBody!.Split("What changed:")[1], StringComparison.Ordinal);
        Assert.Equal("Harrowmere (invented), Thursday 21 May 2026: brief withdrawn (revision 2)", mails[2].Subject);
        Assert.Contains("Do not use this brief any more", mails[2].TextBody, StringComparison.Ordinal);
        Assert.Empty(mails[2].Attachments);
        Assert.Equal(3, mails.Select(mail => mail.MessageId).Distinct().Count());
        Assert.Equal(mails[0].MessageId, mails[1].InReplyTo);
        Assert.Equal([mails[0].MessageId!, mails[1].MessageId!], mails[2].References.ToArray());
        Assert.All(mails, mail => Assert.Equal("\"Harrowmere (invented)\" <harrowmere.daybrief.field.example>", mail.Headers["List-Id"]));
        Assert.All(mails, mail => Assert.Equal("auto-generated", mail.Headers[HeaderId.AutoSubmitted]));
    }

    [Fact]
    public async Task A_mail_is_in_the_language_of_the_site()
    {
        _rig.SwitchOn(SendingRig.Mail("piloten@club.example"), site => site with { Language = "de" });
        await _rig.SignAsync();
        await _rig.RunAsync();
        var mail = Assert.Single(_server.Messages).Message;
        Assert.Equal("Harrowmere (invented), Donnerstag, 21. Mai 2026: Briefing, Fassung 1", mail.Subject);
        Assert.Contains("Unterschrieben von Ada Invented", mail.TextBody, StringComparison.Ordinal);
        Assert.Contains("lang=\"de\"", mail.HtmlBody, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Names_and_reasons_with_line_breaks_begin_no_header_and_add_no_recipient()
    {
        const string evil = "Field\r\nBcc: evil@example.net\r\n\r\nbody\u2028X-Evil: yes";
        _rig.SwitchOn(SendingRig.Mail("pilots@club.example"), site => site with { Name = evil });
        var first = await _rig.SignAsync(signer: "Ada\r\nBcc: evil@example.net");
        await _rig.AmendAsync(first.BriefId, 12, "late\r\n.\r\nRCPT TO:<evil@example.net>");
        await _rig.RunAsync();
        Assert.Equal(2, _server.Messages.Count);
        foreach (var caught in _server.Messages)
        {
            Assert.Equal(["pilots@club.example"], caught.Envelope);
            Assert.DoesNotContain(caught.Head, line => line.StartsWith("Bcc", StringComparison.OrdinalIgnoreCase) || line.StartsWith("X-Evil", StringComparison.OrdinalIgnoreCase));
            Assert.Empty(caught.Message.Bcc);
            Assert.StartsWith("Field Bcc: evil@example.net body X-Evil: yes, ", caught.Message.Subject, StringComparison.Ordinal);
            Assert.NotNull(caught.Message.HtmlBody);
        }
    }

    [Theory]
    [InlineData("pilots@example.org", true)]
    [InlineData("first.last+brief@mail.example.org", true)]
    [InlineData("pilots@example.org\r\nBcc: evil@example.net", false)]
    [InlineData("pilots@example.org, evil@example.net", false)]
    [InlineData("Pilots <pilots@example.org>", false)]
    [InlineData("pilots example.org", false)]
    [InlineData("a@b@example.org", false)]
    [InlineData("pilots@example.org>", false)]
    [InlineData("", false)]
    public void Only_one_plain_address_is_taken(string address, bool taken) => Assert.Equal(taken, SiteSendingJson.IsMailbox(address));
}
