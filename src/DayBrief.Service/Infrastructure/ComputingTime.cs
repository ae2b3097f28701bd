namespace DayBrief.Service.Infrastructure;

/// <summary>How long a computing may go on: while somebody waits for it, the service runs, and its budget lasts.</summary>
internal sealed class ComputingTime(IHttpContextAccessor request, IHostApplicationLifetime? life = null)
{
    /// <summary>The longest day that is asked for takes a tenth of it on a slow machine.</summary>
    public static readonly TimeSpan Budget = TimeSpan.FromSeconds(60);

    private CancellationToken Stopping => life?.ApplicationStopping ?? CancellationToken.None;

    /// <exception cref="OperationCanceledException">Nobody waits any more, or the service stops.</exception>
    /// <exception cref="TimeoutException">The budget is used up.</exception>
    public T Within<T>(Func<CancellationToken, T> compute)
    {
        using var source = CancellationTokenSource.CreateLinkedTokenSource(
            request.HttpContext?.RequestAborted ?? CancellationToken.None, Stopping);
        source.CancelAfter(Budget);
        try
        {
            return compute(source.Token);
        }
        catch (OperationCanceledException) when (!Stopping.IsCancellationRequested && request.HttpContext?.RequestAborted.IsCancellationRequested != true)
        {
            throw new TimeoutException("The computing was stopped: it took longer than any day does.");
        }
    }
}
