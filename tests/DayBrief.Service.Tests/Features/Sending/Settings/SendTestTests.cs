using System.Net;
using System.Text.Json;
using DayBrief.Service.Features.People;
using DayBrief.Service.Features.Sending.Mail;
using DayBrief.Service.Features.Sending.Webhooks;
using DayBrief.Service.Features.Sites;
using SmtpServer.Protocol;

namespace DayBrief.Service.Features.Sending.Settings;

/// <summary>Tests that an administrator sends, against a real mail server and a real web server on loopback.</summary>
[Collection(OneService.Name)]
public sealed class SendTestTests
{
    private const string Path = $"/sites/{SendingRig.Site}/sending";

    private static CancellationToken Stopping => TestContext.Current.CancellationToken;

    [Fact]
    public async Task A_test_mail_arrives_says_that_it_is_one_and_the_page_says_what_the_server_said()
    {
        await using var server = new CatchingMailServer();
        await using var rig = new SendingRig(SendingRig.MailSettings(server.Port));
        rig.SwitchOn(SendingRig.Mail("pilots@club.example", "other@club.example"), site => site with { Language = "de" });
        Assert.Contains("Send a test mail: pilots@club.example", await rig.Administrator().GetStringAsync(Path, Stopping), StringComparison.Ordinal);
        var page = await TestAsync(rig, "Mail", "pilots@club.example");
        Assert.Contains("The test to pilots@club.example was taken. The other side answered: Ok", page, StringComparison.Ordinal);
        var caught = Assert.Single(server.Messages);
        Assert.Equal(["pilots@club.example"], caught.Envelope);
        Assert.Equal("Testmail von Harrowmere (invented)", caught.Message.Subject);
        Assert.StartsWith("Das ist ein Test.", caught.Message.TextBody, StringComparison.Ordinal);
        Assert.Empty(caught.Message.Attachments);
        Assert.Equal("pilots@club.example: taken", Audited(rig));
        Assert.Empty(rig.Deliveries());
    }

    [Fact]
    public async Task What_a_mail_server_refuses_a_test_with_stands_on_the_page()
    {
        await using var server = new CatchingMailServer(_ => new SmtpResponse(SmtpReplyCode.MailboxUnavailable, "no such pilots"));
        await using var rig = new SendingRig(SendingRig.MailSettings(server.Port));
        rig.SwitchOn(SendingRig.Mail("pilots@club.example"));
        Assert.Contains("The test to pilots@club.example failed. The other side answered: 550 no such pilots", await TestAsync(rig, "Mail", "pilots@club.example"), StringComparison.Ordinal);
        Assert.Equal("pilots@club.example: Answer", Audited(rig));
    }

    [Fact]
    public async Task Without_a_mail_server_the_page_says_that_there_is_none()
    {
        await using var rig = new SendingRig();
        rig.SwitchOn(SendingRig.Mail("pilots@club.example"));
        Assert.Contains("failed. This installation has no mail server set.", await TestAsync(rig, "Mail", "pilots@club.example"), StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_test_webhook_is_signed_says_that_it_is_one_and_the_page_says_what_came_back()
    {
        await using var receiver = await WebhookReceiver.StartAsync(204, 500);
        await using var rig = new SendingRig(receiver.Allowed);
        rig.SwitchOn(SendingRig.Webhook(receiver.At("/hook")));
        Assert.Contains("was taken. The other side answered: HTTP 204", await TestAsync(rig, "Webhook", receiver.At("/hook").ToString()), StringComparison.Ordinal);
        Assert.Contains("failed. The other side answered: HTTP 500", await TestAsync(rig, "Webhook", receiver.At("/hook").ToString()), StringComparison.Ordinal);
        Assert.Equal(2, receiver.Posts.Count);
        var post = receiver.Posts[0];
        using var body = JsonDocument.Parse(post.Body);
        Assert.Equal(["event", "site"], body.RootElement.EnumerateObject().Select(field => field.Name));
        Assert.Equal("test", body.RootElement.GetProperty("event").GetString());
        var signature = WebhookSignature.Of(
            new WebhookJson(null, SendingRig.Secret).Key()!, post.Headers[WebhookSignature.IdHeader], rig.Clock.Now, post.Body);
        Assert.Equal(signature, post.Headers[WebhookSignature.SignatureHeader]);
    }

    [Fact]
    public async Task A_test_leads_no_more_into_the_own_network_than_a_brief_does()
    {
        await using var receiver = await WebhookReceiver.StartAsync(200);
        await using var rig = new SendingRig();
        rig.SwitchOn(SendingRig.Webhook(receiver.Address));
        Assert.Contains("the administrator has not allowed it.", await TestAsync(rig, "Webhook", receiver.Address.ToString()), StringComparison.Ordinal);
        Assert.Empty(receiver.Posts);
    }

    [Fact]
    public async Task Only_an_administrator_sends_a_test_and_only_to_an_address_that_is_kept()
    {
        await using var server = new CatchingMailServer();
        await using var rig = new SendingRig(SendingRig.MailSettings(server.Port));
        rig.SwitchOn(SendingRig.Mail("pilots@club.example"));
        Assert.NotEqual(HttpStatusCode.OK, (await rig.Host.Client().PostAsync($"{Path}/test", Form("Mail", "pilots@club.example"), Stopping)).StatusCode);
        Assert.Equal(HttpStatusCode.NotFound, (await rig.Administrator().PostAsync($"{Path}/test", Form("Mail", "stranger@club.example"), Stopping)).StatusCode);
        Assert.Equal(0, server.Offered);
    }

    private static async Task<string> TestAsync(SendingRig rig, string channel, string address)
    {
        var answer = await rig.Administrator().PostAsync($"{Path}/test", Form(channel, address), Stopping);
        Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
        return WebUtility.HtmlDecode(await answer.Content.ReadAsStringAsync(Stopping));
    }

    private static string? Audited(SendingRig rig)
    {
        var entry = rig.Host.Get<AuditLog>().Between(rig.Clock.Now.AddDays(-1), rig.Clock.Now.AddDays(1))[0];
        Assert.Equal(("Sent a test", SendingRig.Site), (entry.Action, entry.About));
        return entry.Detail;
    }

    private static FormUrlEncodedContent Form(string channel, string address) => new([new("channel", channel), new("address", address)]);
}
