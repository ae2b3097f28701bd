using System.Net;
using DayBrief.Service.Features.Briefs;
using DayBrief.Service.Features.Briefs.Revisions;
using DayBrief.Service.Features.Sending.Deliveries;
using DayBrief.Service.Features.Sites;

namespace DayBrief.Service.Features.Sending;

/// <summary>A service whose clock stands on the morning of an invented day, and what a test does with it.</summary>
internal sealed class SendingRig : IAsyncDisposable
{
    public const string Key = "a key for the tests that is long enough";
    public const string Site = "harrowmere";

    public const string Secret = "whsec_MfKQ9r8GKYqrTwjUPD8ILPZIo2LaLaSw";

    public SendingRig(params (string Name, string Value)[] settings) =>
        Host = ServiceHost.With(Clock, [("DAYBRIEF_ADMIN_KEY", Key), .. settings]);

    public SetClock Clock { get; } = new(new(2026, 5, 21, 6, 0, 0, TimeSpan.Zero));

    public ServiceHost Host { get; }

    private static CancellationToken Stopping => TestContext.Current.CancellationToken;

    public static (string Name, string Value)[] MailSettings(int port, params (string Name, string Value)[] others) =>
    [
        ("DayBrief:Smtp:Host", "127.0.0.1"),
        ("DayBrief:Smtp:Port", $"{port}"),
        ("DayBrief:Smtp:From", "brief@field.example"),
        .. others.Any(other => other.Name == "DayBrief:Smtp:Security") ? [] : new[] { ("DayBrief:Smtp:Security", "none") },
        .. others,
    ];

    public HttpClient Administrator()
    {
        var client = Host.Client();
        client.DefaultRequestHeaders.Add("X-Api-Key", Key);
        return client;
    }

    /// <summary>Switches on for the demonstration's field, with more of it changed where a test wants.</summary>
    public void SwitchOn(SiteSendingJson sending, Func<SiteJson, SiteJson>? otherwise = null)
    {
        var site = Host.Get<SiteStore>().Find(Site)! with { Sending = sending };
        Host.Get<SiteStore>().Save(otherwise?.Invoke(site) ?? site);
    }

    public static SiteSendingJson Mail(params string[] to) => new() { MailTo = to };

    public static SiteSendingJson Webhook(Uri address) => new() { Webhooks = [new(address.ToString(), Secret)] };

    /// <summary>Signs the day's first revision.</summary>
    public async Task<Revision> SignAsync(string signer = "Ada Invented")
    {
        var client = Administrator();
        var sounding = await (await client.PostAsync("/api/v1/soundings", Demo.Plain(Demo.Text("broad-post-frontal.txt")), Stopping)).JsonAsync(HttpStatusCode.Created);
        var made = await client.PostAsync("/api/v1/briefs", Demo.Json($$"""
            { "soundingId": "{{sounding.GetProperty("id").GetString()}}", "site": "{{Site}}", "date": "2026-05-21", "preparedBy": "a test",
              "assumptions": { "maxTemperatureC": 17, "cloudOktas": 1, "ensemble": 50 } }
            """), Stopping);
        return await SignAsync((await made.JsonAsync(HttpStatusCode.Created)).GetProperty("id").GetString()!, null, signer);
    }

    /// <summary>Signs the next revision, for another maximum.</summary>
    public async Task<Revision> AmendAsync(string id, double maxC, string reason)
    {
        var inputs = Host.Get<BriefStore>().Find(id)!.Inputs!;
        Host.Get<BriefDesk>().Make(inputs with { Assumptions = inputs.Assumptions with { MaxTemperatureC = maxC } }, id);
        return await SignAsync(id, reason, "Ada Invented");
    }

    public Task<Revision> SignAgainAsync(string id, string reason) => SignAsync(id, reason, "Ada Invented");

    public void Withdraw(string id, string reason) => Host.Get<Signing>().Withdraw(id, new("ada", "Ada Invented"), reason);

    /// <summary>Sends what is due, as the job does.</summary>
    public Task RunAsync() => Host.Get<SendOut>().RunAsync(Stopping);

    public Task RunAfterAsync(TimeSpan pause)
    {
        Clock.Now += pause;
        return RunAsync();
    }

    public IReadOnlyList<Delivery> Deliveries() => Host.Get<DeliveryLedger>().Latest(Site, 100);

    public ValueTask DisposeAsync() => Host.DisposeAsync();

    private async Task<Revision> SignAsync(string id, string? reason, string signer) =>
        (await Host.Get<Signing>().SignAsync(id, Host.Get<BriefStore>().Find(id)!.Version, new("ada", signer), reason)).Revision!;
}
