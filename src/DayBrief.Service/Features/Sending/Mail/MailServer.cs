using System.Net;
using DayBrief.Service.Features.Sites;
using DayBrief.Service.Infrastructure;
using MailKit.Security;
using MimeKit;

namespace DayBrief.Service.Features.Sending.Mail;

/// <summary>The mail server of the installation: settings DayBrief__Smtp__Host, __Port, __User, __Password, __From, __Security,
/// __AllowPlain, __CertificateSha256. Without a host nothing is mailed.</summary>
internal sealed class MailServer
{
    private const string Section = "DayBrief:Smtp";

    /// <exception cref="UnusableSettingException">A setting cannot be used.</exception>
    public MailServer(IConfiguration configuration)
    {
        var smtp = configuration.GetSection(Section);
        if (smtp["Host"] is not { Length: > 0 } host)
            return;
        Host = host;
        (Security, var usual) = smtp["Security"]?.ToLowerInvariant() switch
        {
            null or "" or "starttls" => (SecureSocketOptions.StartTls, 587),
            "tls" => (SecureSocketOptions.SslOnConnect, 465),
            "none" => (SecureSocketOptions.None, 25),
            var other => throw Unusable("Security", $"must be starttls, tls or none; it is \"{other}\""),
        };
        if (Security == SecureSocketOptions.None && !IsLoopback(host) && !smtp.GetValue("AllowPlain", false))
            throw Unusable("Security", "may be none only for a server on this machine, unless AllowPlain is true");
        Port = smtp["Port"] is { Length: > 0 } port
            ? ushort.TryParse(port, out var number) && number > 0 ? number : throw Unusable("Port", $"must be from 1 to 65535; it is \"{port}\"")
            : usual;
        (User, Password) = (smtp["User"], smtp["Password"]);
        if (string.IsNullOrEmpty(User) != string.IsNullOrEmpty(Password))
            throw Unusable("User", "and Password belong together: set both or none");
        CertificateSha256 = smtp["CertificateSha256"]?.Replace(":", "", StringComparison.Ordinal);
        if (CertificateSha256 is { Length: not 64 })
            throw Unusable("CertificateSha256", "must be 64 hexadecimal digits");
        From = smtp["From"] is { } from && SiteSendingJson.IsMailbox(from) && MailboxAddress.TryParse(from, out var mailbox)
            ? mailbox
            : throw Unusable("From", $"must be a mail address such as brief@example.org; it is \"{smtp["From"]}\"");
    }

    /// <summary>Null: nothing is mailed.</summary>
    public string? Host { get; }

    public int Port { get; }

    public SecureSocketOptions Security { get; }

    public string? User { get; }

    public string? Password { get; }

    /// <summary>Fingerprint of a certificate that is trusted though no authority vouches for it.</summary>
    public string? CertificateSha256 { get; }

    public MailboxAddress? From { get; }

    private static bool IsLoopback(string host) =>
        host.Equals("localhost", StringComparison.OrdinalIgnoreCase) || (IPAddress.TryParse(host.Trim('[', ']'), out var address) && IPAddress.IsLoopback(address));

    private static UnusableSettingException Unusable(string name, string why) => new($"{Section}:{name} {why}.");
}
