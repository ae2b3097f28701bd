using System.Globalization;
using System.Net;
using DayBrief.Service.Infrastructure.Outgoing;
using Polly;
using Polly.Retry;

namespace DayBrief.Service.Features.Automation.Fetching;

/// <summary>Gets what stands under an HTTP address, within limits, and never out of the host's own network.</summary>
internal sealed class AddressFetcher : IDisposable
{
    private readonly AddressGuard _guard;
    private readonly FetchLimits _limits;
    private readonly TimeProvider _clock;
    private readonly HttpClient _client;
    private readonly ResiliencePipeline<byte[]> _retrying;

    public AddressFetcher(AddressGuard guard, FetchLimits limits, TimeProvider clock)
    {
        (_guard, _limits, _clock) = (guard, limits, clock);
        _client = new(new SocketsHttpHandler
        {
            ConnectCallback = guard.ConnectAsync,
            ConnectTimeout = limits.Silence,
            // A proxy would resolve and connect by itself, past the guard.
            UseProxy = false,
            AllowAutoRedirect = false,
            UseCookies = false,
            AutomaticDecompression = DecompressionMethods.All,
            PooledConnectionLifetime = TimeSpan.FromMinutes(1),
        })
        {
            Timeout = Timeout.InfiniteTimeSpan,
        };
        _client.DefaultRequestHeaders.UserAgent.ParseAdd("DayBrief");
        _retrying = Retrying(limits);
    }

    /// <summary>The body, unpacked. Asks again, with growing pauses, while the failure may pass.</summary>
    /// <exception cref="FetchException">It is refused, or gave nothing to the last.</exception>
    public async Task<byte[]> FetchAsync(Uri address, CancellationToken stopping) =>
        await _retrying.ExecuteAsync(async token => await OnceAsync(address, token), stopping);

    public void Dispose() => _client.Dispose();

    // The pauses are of real time even where tests set the clock: they wait for another machine.
    private static ResiliencePipeline<byte[]> Retrying(FetchLimits limits) => limits.Retries == 0
        ? ResiliencePipeline<byte[]>.Empty
        : new ResiliencePipelineBuilder<byte[]>().AddRetry(new RetryStrategyOptions<byte[]>
        {
            ShouldHandle = attempt => ValueTask.FromResult(
                attempt.Outcome.Exception is FetchException { MayPass: true } failed && !(failed.RetryAfter > limits.LongestDelay)),
            MaxRetryAttempts = limits.Retries,
            BackoffType = DelayBackoffType.Exponential,
            Delay = limits.FirstDelay,
            DelayGenerator = attempt => ValueTask.FromResult((attempt.Outcome.Exception as FetchException)?.RetryAfter),
        }).Build();

    private async Task<byte[]> OnceAsync(Uri address, CancellationToken stopping)
    {
        using var whole = CancellationTokenSource.CreateLinkedTokenSource(stopping);
        whole.CancelAfter(_limits.Whole);
        try
        {
            return await FollowAsync(address, whole.Token);
        }
        catch (OperationCanceledException slow) when (!stopping.IsCancellationRequested)
        {
            throw new FetchException(FetchFault.TimeOut, address.Host, mayPass: true, cause: slow);
        }
        catch (HttpRequestException failed) when (Inner(failed) is { } inner)
        {
            throw inner;
        }
        catch (HttpRequestException failed)
        {
            var broken = failed.HttpRequestError is HttpRequestError.ResponseEnded or HttpRequestError.InvalidResponse;
            throw new FetchException(broken ? FetchFault.Broken : FetchFault.Connection, address.Host, mayPass: true, cause: failed);
        }
        catch (Exception broken) when (broken is IOException or InvalidDataException)
        {
            throw new FetchException(FetchFault.Broken, address.Host, mayPass: true, cause: broken);
        }
    }

    private async Task<byte[]> FollowAsync(Uri address, CancellationToken stopping)
    {
        for (var hop = 0; hop <= _limits.Redirects; hop++)
        {
            _guard.Check(address);
            using var request = new HttpRequestMessage(HttpMethod.Get, address);
            using var response = await _client.SendAsync(request, HttpCompletionOption.ResponseHeadersRead, stopping);
            if (response.IsSuccessStatusCode)
                return await ReadAsync(response, address, stopping);
            if (!IsRedirect(response.StatusCode))
                throw Failed(response);
            address = Next(address, response.Headers.Location);
        }

        throw new FetchException(FetchFault.Redirects, address.Host, mayPass: false);
    }

    private static Uri Next(Uri from, Uri? location)
    {
        if (location is null)
            throw new FetchException(FetchFault.Redirects, from.Host, mayPass: false);
        var next = new Uri(from, location);
        return from.Scheme == Uri.UriSchemeHttps && next.Scheme == Uri.UriSchemeHttp
            ? throw new FetchException(FetchFault.Scheme, next.Scheme, mayPass: false)
            : next;
    }

    private async Task<byte[]> ReadAsync(HttpResponseMessage response, Uri address, CancellationToken stopping)
    {
        if (response.Content.Headers.ContentLength > _limits.MaxBytes)
            throw TooLarge(address);
        using var silence = CancellationTokenSource.CreateLinkedTokenSource(stopping);
        await using var body = await response.Content.ReadAsStreamAsync(stopping);
        using var kept = new MemoryStream();
        var chunk = new byte[65536];
        while (true)
        {
            silence.CancelAfter(_limits.Silence);
            var read = await body.ReadAsync(chunk, silence.Token);
            if (read == 0)
                return kept.ToArray();
            if (kept.Length + read > _limits.MaxBytes)
                throw TooLarge(address);
            kept.Write(chunk, 0, read);
        }
    }

    private static FetchException TooLarge(Uri address) => new(FetchFault.Size, address.Host, mayPass: false);

    private FetchException Failed(HttpResponseMessage response)
    {
        var status = (int)response.StatusCode;
        var after = response.Headers.RetryAfter;
        var wait = after?.Delta ?? (after?.Date is { } date ? date - _clock.GetUtcNow() : null);
        return new(
            FetchFault.Status,
            status.ToString(CultureInfo.InvariantCulture),
            mayPass: status is 408 or 425 or 429 or >= 500,
            wait is { } asked && asked > TimeSpan.Zero ? asked : null);
    }

    private static bool IsRedirect(HttpStatusCode status) => (int)status is 301 or 302 or 303 or 307 or 308;

    // The handler wraps what the guard throws while connecting.
    private static FetchException? Inner(Exception? failed) =>
        failed is null ? null : failed as FetchException ?? Inner(failed.InnerException);
}
