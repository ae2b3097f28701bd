using DayBrief.Service.Infrastructure;
using MailKit.Security;
using Microsoft.Extensions.Configuration;

namespace DayBrief.Service.Features.Sending.Mail;

/// <summary>The installation's settings for mail.</summary>
public sealed class MailServerTests
{
    [Fact]
    public void Without_a_host_nothing_is_mailed() => Assert.Null(Of().Host);

    /// <summary>Usual ports: RFC 8314, 3.3 (465 and 587), RFC 5321, 4.5.4.2 (25).</summary>
    [Theory]
    [InlineData(null, SecureSocketOptions.StartTls, 587)]
    [InlineData("starttls", SecureSocketOptions.StartTls, 587)]
    [InlineData("TLS", SecureSocketOptions.SslOnConnect, 465)]
    public void Encryption_is_the_default_and_brings_its_port(string? security, SecureSocketOptions expected, int port)
    {
        var server = Of(("Host", "mail.example.org"), ("From", "brief@example.org"), ("Security", security));
        Assert.Equal((expected, port), (server.Security, server.Port));
    }

    [Theory]
    [InlineData("localhost", null, true)]
    [InlineData("127.0.0.1", null, true)]
    [InlineData("::1", null, true)]
    [InlineData("mail.example.org", null, false)]
    [InlineData("10.0.0.1", null, false)]
    [InlineData("mail.example.org", "true", true)]
    public void Plain_text_goes_only_to_this_machine_unless_allowed(string host, string? allow, bool usable)
    {
        MailServer Make() => Of(("Host", host), ("From", "brief@example.org"), ("Security", "none"), ("AllowPlain", allow));
        if (usable)
            Assert.Equal(SecureSocketOptions.None, Make().Security);
        else
            Assert.Contains("Security", Assert.Throws<UnusableSettingException>(Make).Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("Port", "0")]
    [InlineData("Port", "many")]
    [InlineData("From", "nobody")]
    [InlineData("From", "a@example.org\r\nBcc: b@example.org")]
    [InlineData("Security", "perhaps")]
    [InlineData("User", "alone")]
    [InlineData("CertificateSha256", "AB")]
    public void A_setting_that_cannot_be_used_is_named(string name, string value) =>
        Assert.Contains(name, Assert.Throws<UnusableSettingException>(() => Of(("Host", "mail.example.org"), ("From", "brief@example.org"), (name, value))).Message, StringComparison.Ordinal);

    private static MailServer Of(params (string Name, string? Value)[] settings) => new(new ConfigurationBuilder()
        .AddInMemoryCollection(settings.GroupBy(setting => setting.Name).Select(setting => KeyValuePair.Create($"DayBrief:Smtp:{setting.Key}", setting.Last().Value)))
        .Build());
}
