using System.Globalization;
using System.Net.Http.Headers;
using System.Security.Cryptography;
using System.Text;
using System.Text.Json;
using DayBrief.Service.Features.Briefs;
using DayBrief.Service.Features.Sending.Deliveries;
using DayBrief.Service.Features.Sending.Notices;
using DayBrief.Service.Features.Sites;
using DayBrief.Service.Infrastructure;
using DayBrief.Service.Infrastructure.Outgoing;
using DayBrief.Service.Languages;

namespace DayBrief.Service.Features.Sending.Webhooks;

/// <summary>Tells an address by POST of signed JSON, never into the host's own network unless the administrator allows it.</summary>
internal sealed class WebhookClient : IDisposable
{
    private readonly AddressGuard _guard;
    private readonly PublicAddress _address;
    private readonly Installation _installation;
    private readonly WebhookLimits _limits;
    private readonly TimeProvider _clock;
    private readonly HttpClient _client;

    public WebhookClient(AddressGuard guard, PublicAddress address, Installation installation, WebhookLimits limits, TimeProvider clock)
    {
        (_guard, _address, _installation, _limits, _clock) = (guard, address, installation, limits, clock);
        _client = new(new SocketsHttpHandler
        {
            ConnectCallback = guard.ConnectAsync,
            // A proxy would resolve and connect by itself, past the guard.
            UseProxy = false,
            // Where a redirect leads nobody has looked at; a POST must not go there.
            AllowAutoRedirect = false,
            UseCookies = false,
            PooledConnectionLifetime = TimeSpan.FromMinutes(1),
        })
        {
            Timeout = Timeout.InfiniteTimeSpan,
        };
        _client.DefaultRequestHeaders.UserAgent.ParseAdd("DayBrief");
    }

    /// <returns>What the other side answered.</returns>
    /// <exception cref="SendFailedException">The other side has not taken it, or has not said so in time.</exception>
    public Task<string> SendAsync(WebhookJson webhook, Notice notice, MadeBrief made, SiteJson site, CancellationToken stopping)
    {
        var text = NoticeText.Of(notice, made, Language.OfSite(site.Language));
        var id = _installation.IdOf($"webhook {notice.Id}").ToString();
        return PostAsync(webhook, id, JsonSerializer.Serialize(WebhookBody.Of(notice, text, site, _address), Json.Line), stopping);
    }

    /// <summary>A POST that says that it is a test and nothing else, signed like every other.</summary>
    /// <exception cref="SendFailedException">The other side has not taken it, or has not said so in time.</exception>
    public Task<string> TestAsync(WebhookJson webhook, SiteJson site, CancellationToken stopping) => PostAsync(
        webhook,
        Convert.ToHexStringLower(RandomNumberGenerator.GetBytes(16)),
        JsonSerializer.Serialize(new WebhookTest("test", new(site.Id, site.Name)), Json.Line),
        stopping);

    public void Dispose() => _client.Dispose();

    private async Task<string> PostAsync(WebhookJson webhook, string id, string body, CancellationToken stopping)
    {
        if (webhook.Target() is not { } target || webhook.Key() is not { } key)
            throw new SendFailedException(SendFault.TakenOut, webhook.Address, mayPass: false);
        using var slow = CancellationTokenSource.CreateLinkedTokenSource(stopping);
        slow.CancelAfter(_limits.Whole);
        try
        {
            _guard.Check(target);
            using var request = Request(target, key, id, body);
            using var response = await _client.SendAsync(request, HttpCompletionOption.ResponseHeadersRead, slow.Token);
            if (!response.IsSuccessStatusCode)
                throw Refused(response);
            return Answer(response);
        }
        catch (OperationCanceledException cause) when (!stopping.IsCancellationRequested)
        {
            throw new SendFailedException(SendFault.TimeOut, target.Host, cause: cause);
        }
        catch (Exception failed) when (Guarded(failed) is { } guarded)
        {
            throw guarded.IsRefusal
                ? new SendFailedException(SendFault.OwnNetwork, target.Authority, mayPass: false, cause: failed)
                : new SendFailedException(SendFault.Connection, guarded.About, cause: failed);
        }
        catch (HttpRequestException failed)
        {
            throw new SendFailedException(
                failed.HttpRequestError == HttpRequestError.SecureConnectionError ? SendFault.NotSecure : SendFault.Connection, target.Host, cause: failed);
        }
    }

    private HttpRequestMessage Request(Uri target, byte[] key, string id, string body)
    {
        var now = _clock.GetUtcNow();
        var request = new HttpRequestMessage(HttpMethod.Post, target)
        {
            Content = new StringContent(body, Encoding.UTF8, new MediaTypeHeaderValue("application/json", "utf-8")),
        };
        request.Headers.Add(WebhookSignature.IdHeader, id);
        request.Headers.Add(WebhookSignature.TimeHeader, now.ToUnixTimeSeconds().ToString(CultureInfo.InvariantCulture));
        request.Headers.Add(WebhookSignature.SignatureHeader, WebhookSignature.Of(key, id, now, body));
        return request;
    }

    private SendFailedException Refused(HttpResponseMessage response)
    {
        var status = (int)response.StatusCode;
        if (status is >= 300 and < 400)
            return new(SendFault.Redirect, NoticeText.Line(response.Headers.Location?.ToString() ?? "?"), mayPass: false);
        var after = response.Headers.RetryAfter;
        return new(
            SendFault.Answer,
            Answer(response),
            mayPass: status is 408 or 425 or 429 or >= 500,
            after?.Delta ?? (after?.Date is { } date ? date - _clock.GetUtcNow() : null));
    }

    private static string Answer(HttpResponseMessage response) => string.Create(CultureInfo.InvariantCulture, $"HTTP {(int)response.StatusCode}");

    // The handler wraps what the guard throws while connecting.
    private static FetchException? Guarded(Exception? failed) =>
        failed is null ? null : failed as FetchException ?? Guarded(failed.InnerException);
}

/// <summary>How long a webhook may take.</summary>
internal sealed record WebhookLimits
{
    /// <summary>From the first byte sent to the status.</summary>
    public TimeSpan Whole { get; init; } = TimeSpan.FromSeconds(15);
}
