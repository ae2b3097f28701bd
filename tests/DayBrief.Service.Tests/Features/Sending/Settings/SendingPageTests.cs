using System.Net;
using DayBrief.Service.Features.Sending.Deliveries;
using DayBrief.Service.Features.Sending.Mail;
using DayBrief.Service.Features.Sites;

namespace DayBrief.Service.Features.Sending.Settings;

[Collection(OneService.Name)]
public sealed class SendingPageTests
{
    private const string Path = $"/sites/{SendingRig.Site}/sending";

    private static CancellationToken Stopping => TestContext.Current.CancellationToken;

    [Fact]
    public async Task Only_an_administrator_sees_and_changes_to_whom_a_site_sends()
    {
        await using var rig = new SendingRig();
        Assert.NotEqual(HttpStatusCode.OK, (await rig.Host.Client().GetAsync(Path, Stopping)).StatusCode);
        Assert.NotEqual(HttpStatusCode.OK, (await rig.Host.Client().PostAsync(Path, Form(("feed", "on")), Stopping)).StatusCode);
        Assert.Null(rig.Host.Get<SiteStore>().Find(SendingRig.Site)!.Sending);
    }

    [Fact]
    public async Task What_is_kept_stands_on_the_page_and_a_webhook_keeps_its_secret()
    {
        await using var rig = new SendingRig();
        var client = rig.Administrator();
        var answer = await client.PostAsync(Path, Form(rig, ("mailTo", "a@club.example\r\n\r\n b@club.example "), ("webhooks", "https://hook.example/one"), ("calendar", "on")), Stopping);
        Assert.Equal(HttpStatusCode.Redirect, answer.StatusCode);
        var sending = rig.Host.Get<SiteStore>().Find(SendingRig.Site)!.Sending!;
        Assert.Equal(["a@club.example", "b@club.example"], sending.MailTo!);
        Assert.Equal((false, true), (sending.Feed, sending.Calendar));
        var secret = Assert.Single(sending.Webhooks!).Secret!;
        var page = WebUtility.HtmlDecode(await client.GetStringAsync(Path, Stopping));
        Assert.Contains("b@club.example", page, StringComparison.Ordinal);
        Assert.Contains(secret, page, StringComparison.Ordinal);
        await client.PostAsync(Path, Form(rig, ("webhooks", "https://hook.example/one\nhttps://hook.example/two")), Stopping);
        var webhooks = rig.Host.Get<SiteStore>().Find(SendingRig.Site)!.Sending!.Webhooks!;
        Assert.Equal(secret, webhooks[0].Secret);
        Assert.NotEqual(secret, webhooks[1].Secret);
        Assert.Equal(32, webhooks[1].Key()!.Length);
    }

    [Fact]
    public async Task An_address_that_cannot_be_used_is_named_and_nothing_typed_is_lost()
    {
        await using var rig = new SendingRig();
        var answer = await rig.Administrator().PostAsync(Path, Form(rig, ("mailTo", "a@club.example\nnobody"), ("webhooks", "ftp://hook.example/")), Stopping);
        Assert.Equal(HttpStatusCode.BadRequest, answer.StatusCode);
        var page = WebUtility.HtmlDecode(await answer.Content.ReadAsStringAsync(Stopping));
        Assert.Contains("\"nobody\" is not a mail address", page, StringComparison.Ordinal);
        Assert.Contains("\"ftp://hook.example/\" is not an address", page, StringComparison.Ordinal);
        Assert.Contains("a@club.example\nnobody</textarea>", page, StringComparison.Ordinal);
        Assert.Null(rig.Host.Get<SiteStore>().Find(SendingRig.Site)!.Sending);
    }

    [Fact]
    public async Task A_delivery_that_was_given_up_is_sent_again_when_asked_for()
    {
        await using var server = new CatchingMailServer(offered => offered == 1 ? global::SmtpServer.Protocol.SmtpResponse.MailboxUnavailable : global::SmtpServer.Protocol.SmtpResponse.Ok);
        await using var rig = new SendingRig(SendingRig.MailSettings(server.Port));
        rig.SwitchOn(SendingRig.Mail("pilots@club.example"));
        await rig.SignAsync();
        await rig.RunAsync();
        var failed = Assert.Single(rig.Deliveries());
        Assert.Equal(DeliveryState.Failed, failed.State);
        await rig.Administrator().PostAsync($"{Path}/again", Form(("delivery", failed.Id)), Stopping);
        await rig.RunAsync();
        Assert.Equal((DeliveryState.Sent, 1), (rig.Deliveries()[0].State, server.Messages.Count));
    }

    [Fact]
    public async Task The_second_of_two_administrators_is_told_keeps_what_was_typed_and_overwrites_nothing()
    {
        await using var rig = new SendingRig();
        var client = rig.Administrator();
        var seen = Form(rig, ("mailTo", "first@club.example"));
        var alsoSeen = Form(rig, ("mailTo", "second@club.example"));
        Assert.Matches("name=\"version\" value=\"\\d+\"", await client.GetStringAsync(Path, Stopping));
        Assert.Equal(HttpStatusCode.Redirect, (await client.PostAsync(Path, seen, Stopping)).StatusCode);
        var second = await client.PostAsync(Path, alsoSeen, Stopping);
        var told = await second.Content.ReadAsStringAsync(Stopping);
        Assert.Equal(HttpStatusCode.Conflict, second.StatusCode);
        Assert.Contains("Somebody else has changed this site meanwhile.", told, StringComparison.Ordinal);
        Assert.Contains("second@club.example</textarea>", told, StringComparison.Ordinal);
        Assert.Equal(["first@club.example"], rig.Host.Get<SiteStore>().Find(SendingRig.Site)!.Sending!.MailTo!);
        Assert.Equal(HttpStatusCode.Conflict, (await client.PostAsync(Path, Form(("mailTo", "blind@club.example")), Stopping)).StatusCode);
    }

    private static FormUrlEncodedContent Form(SendingRig rig, params (string Name, string Value)[] fields) =>
        Form([("version", $"{rig.Host.Get<SiteStore>().FindKept(SendingRig.Site)!.Version}"), .. fields]);

    private static FormUrlEncodedContent Form(params (string Name, string Value)[] fields) =>
        new(fields.Select(field => KeyValuePair.Create(field.Name, field.Value)));
}
