using System.Globalization;
using System.Security.Cryptography;
using System.Text;
using System.Text.Json;
using DayBrief.Service.Features.Briefs;
using DayBrief.Service.Features.Sending.Deliveries;
using DayBrief.Service.Features.Sending.Notices;
using DayBrief.Service.Features.Sites;
using DayBrief.Service.Infrastructure;
using DayBrief.Service.Infrastructure.Outgoing;

namespace DayBrief.Service.Features.Sending.Webhooks;

/// <summary>Webhooks against real servers on loopback.</summary>
[Collection(OneService.Name)]
public sealed class WebhookTests
{
    private static CancellationToken Stopping => TestContext.Current.CancellationToken;

    /// <summary>The test vector of the reference libraries of [StandardWebhooks2023].</summary>
    [Fact]
    public void The_signature_is_that_of_the_standard() => Assert.Equal(
        "v1,g0hM9SsE+OTPJTGt/tmIKtSyZlE3uFJELVlNIOLJ1OE=",
        WebhookSignature.Of(
            new WebhookJson("https://example.org", "whsec_MfKQ9r8GKYqrTwjUPD8ILPZIo2LaLaSw").Key()!,
            "msg_p5jXN8AQM9LWM0D4loKWxJek",
            DateTimeOffset.FromUnixTimeSeconds(1614265330),
            """{"test": 2432232314}"""));

    [Fact]
    public async Task A_server_that_fails_gets_it_again_signed_as_a_receiver_checks_it()
    {
        await using var receiver = await WebhookReceiver.StartAsync(500, 200);
        await using var rig = await SignedAsync(receiver.At("/hook"), receiver.Allowed, ("DayBrief:PublicAddress", "https://brief.field.example"));
        Assert.Equal((DeliveryState.Waiting, "HTTP 500"), (rig.Deliveries()[0].State, rig.Deliveries()[0].About));
        await rig.RunAfterAsync(TimeSpan.FromMinutes(1));
        await rig.RunAfterAsync(TimeSpan.FromHours(1));
        Assert.Equal(DeliveryState.Sent, Assert.Single(rig.Deliveries()).State);
        Assert.Equal(2, receiver.Posts.Count);
        Assert.Equal(receiver.Posts[0].Headers["webhook-id"], receiver.Posts[1].Headers["webhook-id"]);
        foreach (var post in receiver.Posts)
        {
            Assert.Equal(("POST", "/hook", "application/json; charset=utf-8"), (post.Method, post.Path, post.Headers["content-type"]));
            var signed = $"{post.Headers["webhook-id"]}.{post.Headers["webhook-timestamp"]}.{post.Body}";
            var expected = HMACSHA256.HashData(Convert.FromBase64String(SendingRig.Secret["whsec_".Length..]), Encoding.UTF8.GetBytes(signed));
            Assert.Equal($"v1,{Convert.ToBase64String(expected)}", post.Headers["webhook-signature"]);
        }

        Assert.Equal(rig.Clock.Now.AddHours(-1).ToUnixTimeSeconds().ToString(CultureInfo.InvariantCulture), receiver.Posts[1].Headers["webhook-timestamp"]);
    }

    [Fact]
    public async Task It_tells_what_was_signed_amended_and_withdrawn()
    {
        await using var receiver = await WebhookReceiver.StartAsync(204);
        await using var rig = await SignedAsync(receiver.Address, receiver.Allowed, ("DayBrief:PublicAddress", "https://brief.field.example"));
        var id = rig.Deliveries()[0].BriefId;
        await rig.AmendAsync(id, 12, "cooler");
        await rig.RunAsync();
        rig.Clock.Now += TimeSpan.FromHours(1);
        rig.Withdraw(id, "front is early");
        await rig.RunAsync();
        var told = receiver.Posts.Select(post => JsonDocument.Parse(post.Body).RootElement).ToArray();
        string?[] Text(string name) => [.. told.Select(body => body.GetProperty(name).GetString())];
        Assert.Equal(["published", "amended", "withdrawn"], Text("event"));
        Assert.Equal([1, 2, 2], told.Select(body => body.GetProperty("revision").GetInt32()));
        Assert.Equal([null, "cooler", "front is early"], Text("reason"));
        Assert.Equal([id, id, id], Text("briefId"));
        Assert.All(told, body => Assert.Equal("2026-05-21", body.GetProperty("date").GetString()));
        Assert.All(told, body => Assert.Equal("Ada Invented", body.GetProperty("signedBy").GetString()));
        Assert.Equal($"https://brief.field.example/briefs/{id}", Text("page")[0]);
        Assert.Equal($"https://brief.field.example/briefs/{id}/sheet.pdf", Text("pdf")[0]);
        Assert.Empty(told[0].GetProperty("changes").EnumerateArray());
        Assert.Contains(told[1].GetProperty("changes").EnumerateArray(), change => change.GetProperty("what").GetString() == "Usable top");
        Assert.Equal("Ada Invented", told[2].GetProperty("withdrawnBy").GetString());
        Assert.Null(told[2].GetProperty("sentence").GetString());
    }

    [Fact]
    public async Task Without_a_public_address_no_link_is_made_up()
    {
        await using var receiver = await WebhookReceiver.StartAsync(200);
        await using var rig = await SignedAsync(receiver.Address, receiver.Allowed);
        var body = JsonDocument.Parse(Assert.Single(receiver.Posts).Body).RootElement;
        Assert.All(new[] { "page", "json", "pdf" }, name => Assert.Equal(JsonValueKind.Null, body.GetProperty(name).ValueKind));
    }

    [Fact]
    public async Task The_own_network_is_refused_unless_the_administrator_allows_the_host()
    {
        await using var receiver = await WebhookReceiver.StartAsync(200);
        foreach (var address in new[] { receiver.Address, new Uri($"http://localhost:{receiver.Address.Port}/"), new Uri($"http://[::ffff:127.0.0.1]:{receiver.Address.Port}/") })
        {
            await using var rig = await SignedAsync(address);
            Assert.Equal((DeliveryState.Failed, SendFault.OwnNetwork), (rig.Deliveries()[0].State, rig.Deliveries()[0].Fault));
        }

        Assert.Empty(receiver.Posts);
    }

    [Fact]
    public async Task A_redirect_is_not_followed_wherever_it_leads()
    {
        await using var inside = await WebhookReceiver.StartAsync(200);
        await using var receiver = await WebhookReceiver.StartAsync((_, context) =>
        {
            context.Response.StatusCode = 307;
            context.Response.Headers.Location = inside.At("/secret").ToString();
            return Task.CompletedTask;
        });
        await using var rig = await SignedAsync(receiver.Address, receiver.Allowed);
        Assert.Equal((DeliveryState.Failed, SendFault.Redirect), (rig.Deliveries()[0].State, rig.Deliveries()[0].Fault));
        Assert.Empty(inside.Posts);
    }

    [Fact]
    public async Task It_is_given_up_after_the_last_attempt_and_the_page_and_the_log_say_so()
    {
        await using var receiver = await WebhookReceiver.StartAsync(503);
        await using var rig = await SignedAsync(receiver.Address, receiver.Allowed);
        for (var i = 0; i < 3 * RetryPauses.MostAttempts; i++)
            await rig.RunAfterAsync(TimeSpan.FromHours(1));
        Assert.Equal(RetryPauses.MostAttempts, receiver.Posts.Count);
        Assert.Equal(DeliveryState.Failed, Assert.Single(rig.Deliveries()).State);
        var page = await rig.Administrator().GetStringAsync($"/sites/{SendingRig.Site}/sending", Stopping);
        Assert.Contains($"Given up after attempt {RetryPauses.MostAttempts}. The other side answered: HTTP 503", page, StringComparison.Ordinal);
        Assert.Contains(rig.Host.Log.Lines, line => line.Contains("is given up", StringComparison.Ordinal));
    }

    [Fact]
    public async Task A_server_that_says_no_is_not_asked_again_and_one_that_asks_to_wait_is_waited_for()
    {
        await using var gone = await WebhookReceiver.StartAsync(410);
        await using (var rig = await SignedAsync(gone.Address, gone.Allowed))
            Assert.Equal(DeliveryState.Failed, rig.Deliveries()[0].State);
        await using var busy = await WebhookReceiver.StartAsync((_, context) =>
        {
            context.Response.StatusCode = 429;
            context.Response.Headers.RetryAfter = "1200";
            return Task.CompletedTask;
        });
        await using var waiting = await SignedAsync(busy.Address, busy.Allowed);
        Assert.Equal(waiting.Clock.Now.AddMinutes(20), waiting.Deliveries()[0].NextAt);
    }

    [Fact]
    public async Task A_server_that_does_not_answer_is_not_waited_for()
    {
        await using var receiver = await WebhookReceiver.StartAsync((_, context) => Task.Delay(Timeout.Infinite, context.RequestAborted));
        await using var rig = new SendingRig();
        var notice = new Notice(await rig.SignAsync());
        using var client = new WebhookClient(
            new AddressGuard(new([receiver.Address.Authority])),
            rig.Host.Get<PublicAddress>(),
            rig.Host.Get<Installation>(),
            new WebhookLimits { Whole = TimeSpan.FromMilliseconds(300) },
            rig.Clock);
        var failed = await Assert.ThrowsAsync<SendFailedException>(() => client.SendAsync(
            new(receiver.Address.ToString(), SendingRig.Secret), notice, rig.Host.Get<BriefDesk>().Of(notice.Revision), rig.Host.Get<SiteStore>().Find(SendingRig.Site)!, Stopping));
        Assert.Equal((SendFault.TimeOut, true), (failed.Fault, failed.MayPass));
    }

    /// <summary>Addresses and secrets are the administrator's; a signed record is everybody's.</summary>
    [Fact]
    public async Task No_address_or_secret_gets_into_a_signed_record()
    {
        await using var rig = new SendingRig();
        rig.SwitchOn(new() { MailTo = ["pilots@club.example"], Webhooks = [new("https://hook.example/", SendingRig.Secret)], Feed = true });
        var revision = await rig.SignAsync();
        foreach (var hidden in new[] { SendingRig.Secret, "pilots@club.example", "hook.example" })
            Assert.DoesNotContain(hidden, revision.Text, StringComparison.Ordinal);
    }

    private static async Task<SendingRig> SignedAsync(Uri address, params (string, string)[] settings)
    {
        var rig = new SendingRig(settings);
        rig.SwitchOn(SendingRig.Webhook(address));
        await rig.SignAsync();
        await rig.RunAsync();
        return rig;
    }
}
