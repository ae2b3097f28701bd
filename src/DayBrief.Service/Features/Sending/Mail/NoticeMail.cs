using System.Text;
using DayBrief.Service.Features.Briefs;
using DayBrief.Service.Features.Briefs.Revisions;
using DayBrief.Service.Features.Sending.Deliveries;
using DayBrief.Service.Features.Sending.Notices;
using DayBrief.Service.Features.Sites;
using DayBrief.Service.Infrastructure;
using DayBrief.Service.Languages;
using MimeKit;

namespace DayBrief.Service.Features.Sending.Mail;

/// <summary>A notice as a mail: short text, the same as HTML, and the very sheet that was signed.</summary>
internal sealed class NoticeMail(PublishedFiles files, RevisionStore revisions, PublicAddress address, Installation installation)
{
    /// <exception cref="SendFailedException">The signed sheet is not there.</exception>
    public async Task<MimeMessage> MessageAsync(Notice notice, MadeBrief made, SiteJson site, MailboxAddress from, string to)
    {
        var language = Language.OfSite(site.Language);
        var text = NoticeText.Of(notice, made, language);
        var name = NoticeText.Line(site.Name ?? site.Id ?? "DayBrief");
        var message = new MimeMessage { Subject = text.Subject, Date = notice.At, MessageId = IdOf(notice.Id, from) };
        message.From.Add(new MailboxAddress(name, from.Address));
        message.To.Add(MailboxAddress.Parse(to));
        Thread(message, notice, from);
        // RFC 2919, and RFC 3834 so that nobody's absence is answered to us.
        message.Headers.Add("List-Id", $"{Quoted(name)} <{Label(site.Id)}.daybrief.{from.Domain}>");
        message.Headers.Add(HeaderId.AutoSubmitted, "auto-generated");
        var link = address.Link($"/briefs/{notice.Revision.BriefId}");
        var body = new BodyBuilder
        {
            TextBody = MailText.Of(text, link, name, language),
            HtmlBody = await MailHtml.RenderAsync(text, link, name, language),
        };
        if (notice.Withdrawal is null)
            body.Attachments.Add($"{Label(site.Id)}-{notice.Revision.Date:yyyy-MM-dd}-r{notice.Revision.Number}.pdf", Sheet(notice.Revision), new ContentType("application", "pdf"));
        message.Body = body.ToMessageBody();
        return message;
    }

    /// <summary>The same for the same revision: a mail that comes twice is seen to be one.</summary>
    internal string IdOf(string noticeId, MailboxAddress from) => $"{installation.IdOf($"mail {noticeId}")}@{from.Domain}";

    /// <summary>All mails of a field's day hang together in the reader's mailbox, whichever of them arrived.</summary>
    private void Thread(MimeMessage message, Notice notice, MailboxAddress from)
    {
        if (notice.Kind == AnnouncementKind.Published)
            return;
        string[] before =
        [
            .. revisions.OrderOf(notice.Revision.SiteId, notice.Revision.Date)
                .TakeWhile(one => one != (notice.Revision.BriefId, notice.Revision.Number)).Select(one => Revision.IdOf(one.BriefId, one.Number)),
            .. notice.Withdrawal is null ? [] : new[] { notice.Revision.Id },
        ];
        message.References.AddRange(before.Select(id => IdOf(id, from)));
        message.InReplyTo = before.Length > 0 ? IdOf(before[^1], from) : null;
    }

    /// <summary>The PDF as it was signed, by the hash that was written beside it.</summary>
    private byte[] Sheet(Revision revision)
    {
        try
        {
            var sheet = files.Read(revision, ".pdf");
            var sums = files.Read(revision, ".sha256");
            return sheet is not null && sums is not null && Encoding.UTF8.GetString(sums).Contains(Revision.HashOf(sheet), StringComparison.Ordinal)
                ? sheet
                : throw new SendFailedException(SendFault.NoSheet, revision.Id);
        }
        catch (NotAsSignedException cause)
        {
            throw new SendFailedException(SendFault.NoSheet, revision.Id, cause: cause);
        }
    }

    private static string Quoted(string name) => $"\"{string.Concat(name.Where(letter => char.IsAscii(letter) && letter is not ('"' or '\\')))}\"";

    /// <summary>An id as a label of a domain name and of a file.</summary>
    private static string Label(string? id) =>
        string.Concat((id ?? "").Select(letter => char.IsAsciiLetterOrDigit(letter) ? char.ToLowerInvariant(letter) : '-')).Trim('-') is { Length: > 0 } label ? label : "field";
}
