using System.Security.Cryptography;
using DayBrief.Service.Features.Sending.Notices;
using DayBrief.Service.Features.Sites;
using DayBrief.Service.Languages;
using MimeKit;

namespace DayBrief.Service.Features.Sending.Mail;

/// <summary>A mail that only shows that mails arrive; it says nothing of any day.</summary>
internal static class TestMail
{
    public static MimeMessage Message(SiteJson site, MailboxAddress from, string to, DateTimeOffset now)
    {
        var language = Language.OfSite(site.Language);
        var name = NoticeText.Line(site.Name ?? site.Id ?? "DayBrief");
        var message = new MimeMessage
        {
            Subject = language.Say($"Test mail of {name}"),
            Date = now,
            MessageId = $"{Convert.ToHexStringLower(RandomNumberGenerator.GetBytes(16))}@{from.Domain}",
            Body = new TextPart("plain")
            {
                Text = $"{language.Say($"This is a test. The briefs that are signed for {name} will be sent to {to}. There is nothing to do.")}\n",
            },
        };
        message.From.Add(new MailboxAddress(name, from.Address));
        message.To.Add(MailboxAddress.Parse(to));
        message.Headers.Add(HeaderId.AutoSubmitted, "auto-generated");
        return message;
    }
}
