using System.Security.Cryptography;
using DayBrief.Service.Features.Sending.Deliveries;
using SmtpServer.Protocol;

namespace DayBrief.Service.Features.Sending.Mail;

/// <summary>Real servers on loopback that refuse, hang up or are not to be trusted.</summary>
[Collection(OneService.Name)]
public sealed class SmtpSessionTests
{
    private static readonly TimeSpan Minute = TimeSpan.FromMinutes(1);

    [Fact]
    public async Task A_server_that_is_busy_gets_it_later_and_once()
    {
        await using var server = new CatchingMailServer(offered => offered == 1 ? new(SmtpReplyCode.ServiceUnavailable, "busy") : SmtpResponse.Ok);
        await using var rig = await SignedAsync(SendingRig.MailSettings(server.Port));
        var first = Assert.Single(rig.Deliveries());
        Assert.Equal((DeliveryState.Waiting, 1, SendFault.Answer), (first.State, first.Attempts, first.Fault));
        Assert.StartsWith("421", first.About, StringComparison.Ordinal);
        await rig.RunAsync();
        Assert.Empty(server.Messages);
        await rig.RunAfterAsync(Minute);
        await rig.RunAfterAsync(60 * Minute);
        Assert.Single(server.Messages);
        Assert.Equal((DeliveryState.Sent, 2, null), (rig.Deliveries()[0].State, rig.Deliveries()[0].Attempts, rig.Deliveries()[0].Fault));
    }

    [Fact]
    public async Task A_server_that_refuses_for_good_is_not_asked_again_and_the_page_says_so()
    {
        await using var server = new CatchingMailServer(_ => new(SmtpReplyCode.MailboxUnavailable, "no such mailbox"));
        await using var rig = await SignedAsync(SendingRig.MailSettings(server.Port));
        await rig.RunAfterAsync(60 * Minute);
        Assert.Equal(1, server.Offered);
        Assert.Equal(DeliveryState.Failed, Assert.Single(rig.Deliveries()).State);
        var page = await rig.Administrator().GetStringAsync($"/sites/{SendingRig.Site}/sending", TestContext.Current.CancellationToken);
        Assert.Contains("550 no such mailbox", page, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_server_that_hangs_up_at_once_is_tried_again()
    {
        await using var server = new RudeMailServer(greets: false);
        await using var rig = await SignedAsync(SendingRig.MailSettings(server.Port));
        var first = Assert.Single(rig.Deliveries());
        Assert.Equal((DeliveryState.Waiting, SendFault.Connection), (first.State, first.Fault));
    }

    /// <summary>RFC 5321, 4.2.5: nobody can tell whether it was taken. It comes twice, and says that it is one mail.</summary>
    [Fact]
    public async Task A_mail_whose_answer_was_lost_comes_again_under_the_same_Message_Id()
    {
        await using var server = new RudeMailServer(lostAnswers: 1);
        await using var rig = await SignedAsync(SendingRig.MailSettings(server.Port));
        await rig.RunAfterAsync(Minute);
        Assert.Equal(DeliveryState.Sent, Assert.Single(rig.Deliveries()).State);
        Assert.Equal(2, server.Taken.Count);
        Assert.Single(server.Taken.Select(mail => mail.Split('\n').Single(line => line.StartsWith("Message-Id:", StringComparison.OrdinalIgnoreCase)).Trim()).Distinct());
    }

    [Fact]
    public async Task User_and_password_go_only_over_a_connection_whose_certificate_is_trusted()
    {
        using var certificate = CatchingMailServer.SelfMade();
        await using var server = new CatchingMailServer(certificate: certificate);
        (string, string)[] settings = [("DayBrief:Smtp:Security", "starttls"), ("DayBrief:Smtp:User", CatchingMailServer.User), ("DayBrief:Smtp:Password", CatchingMailServer.Password)];
        await using (var careful = await SignedAsync(SendingRig.MailSettings(server.Port, settings)))
        {
            Assert.Equal((DeliveryState.Waiting, SendFault.NotSecure), (careful.Deliveries()[0].State, careful.Deliveries()[0].Fault));
            Assert.Equal(0, server.Offered);
        }

        var fingerprint = certificate.GetCertHashString(HashAlgorithmName.SHA256);
        await using var rig = await SignedAsync(SendingRig.MailSettings(server.Port, [.. settings, ("DayBrief:Smtp:CertificateSha256", fingerprint)]));
        Assert.True(Assert.Single(server.Messages).Secure);
        Assert.DoesNotContain(rig.Host.Log.Lines, line => line.Contains(CatchingMailServer.Password, StringComparison.Ordinal));
    }

    [Fact]
    public async Task A_server_without_encryption_gets_nothing_when_it_is_asked_for()
    {
        await using var server = new CatchingMailServer();
        await using var rig = await SignedAsync(SendingRig.MailSettings(server.Port, ("DayBrief:Smtp:Security", "starttls")));
        Assert.Equal((0, SendFault.NotSecure), (server.Offered, rig.Deliveries()[0].Fault));
    }

    [Fact]
    public async Task A_wrong_password_is_said_to_be_one()
    {
        using var certificate = CatchingMailServer.SelfMade();
        await using var server = new CatchingMailServer(certificate: certificate);
        await using var rig = await SignedAsync(SendingRig.MailSettings(
            server.Port,
            ("DayBrief:Smtp:Security", "starttls"),
            ("DayBrief:Smtp:User", CatchingMailServer.User),
            ("DayBrief:Smtp:Password", "wrong"),
            ("DayBrief:Smtp:CertificateSha256", certificate.GetCertHashString(HashAlgorithmName.SHA256))));
        Assert.Equal((DeliveryState.Waiting, SendFault.SignIn), (rig.Deliveries()[0].State, rig.Deliveries()[0].Fault));
    }

    private static async Task<SendingRig> SignedAsync((string, string)[] settings)
    {
        var rig = new SendingRig(settings);
        rig.SwitchOn(SendingRig.Mail("pilots@club.example"));
        await rig.SignAsync();
        await rig.RunAsync();
        return rig;
    }
}
