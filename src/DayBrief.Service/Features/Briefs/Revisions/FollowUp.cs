using System.Threading.Channels;

namespace DayBrief.Service.Features.Briefs.Revisions;

/// <summary>Does what the outbox says is to follow: at once after a signature, at start for what a stop left, and again after a failure.</summary>
internal sealed class FollowUp(Outbox outbox, IServiceProvider parts, TimeProvider clock, ILogger<FollowUp> log) : BackgroundService
{
    private static readonly Action<ILogger, string, Exception?> Failed =
        LoggerMessage.Define<string>(LogLevel.Warning, new(1, nameof(Failed)), "{Entry} of the outbox failed and is tried again");

    private static readonly TimeSpan Look = TimeSpan.FromSeconds(30);

    private static readonly TimeSpan Remembered = TimeSpan.FromDays(30);

    private readonly SemaphoreSlim _one = new(1);
    private readonly Channel<bool> _calls = Channel.CreateBounded<bool>(new BoundedChannelOptions(1) { FullMode = BoundedChannelFullMode.DropWrite });

    /// <summary>Looks into the outbox soon.</summary>
    public void Wake() => _calls.Writer.TryWrite(true);

    /// <summary>Does what follows from one signature. What fails is noted and tried again later; it never fails the signature.</summary>
    public Task NowAsync(Announcement told) => RunAsync([.. OutboxEntry.Of(told).Select(entry => entry.Id)]);

    /// <summary>Does one thing, whatever became of it before.</summary>
    public async Task AgainAsync(OutboxEntry entry)
    {
        outbox.Keep(entry with { IsDone = false, NextAt = clock.GetUtcNow(), Fault = null });
        await RunAsync([entry.Id]);
    }

    public override void Dispose()
    {
        _one.Dispose();
        base.Dispose();
    }

    protected override async Task ExecuteAsync(CancellationToken stoppingToken)
    {
        // The whole service must stand before anything follows.
        await Task.Yield();
        Begin();
        while (!stoppingToken.IsCancellationRequested)
        {
            var now = clock.GetUtcNow();
            await RunAsync([.. outbox.Waiting().Where(entry => entry.NextAt <= now).Select(entry => entry.Id)]);
            await Task.WhenAny(_calls.Reader.WaitToReadAsync(stoppingToken).AsTask(), Task.Delay(Look, stoppingToken));
            _calls.Reader.TryRead(out _);
        }
    }

    private void Begin()
    {
        try
        {
            outbox.Forget(clock.GetUtcNow() - Remembered);
            var files = parts.GetRequiredService<LostFiles>();
            files.TakeBackAscents();
            foreach (var lost in files.Entries())
                outbox.Keep(lost);
        }
        catch (Exception cause)
        {
            // A store that cannot be written must not stop the reading.
            Failed(log, "The start", cause);
        }
    }

    /// <summary>One pass at a time; what another has done meanwhile is done.</summary>
    private async Task RunAsync(string[] ids)
    {
        await _one.WaitAsync();
        try
        {
            foreach (var id in ids)
            {
                if (outbox.Find(id) is { IsDone: false } entry)
                    outbox.Keep(await TryAsync(entry));
            }
        }
        catch (Exception cause)
        {
            // How it went could not be noted, such as on a full disk: it is still waiting, and done again, which doubles nothing.
            Failed(log, "The note", cause);
        }
        finally
        {
            _one.Release();
        }
    }

    private async Task<OutboxEntry> TryAsync(OutboxEntry entry)
    {
        try
        {
            await parts.GetServices<IFollow>().Single(one => one.Follower == entry.Follower).FollowAsync(entry.Told);
            return entry with { IsDone = true, Fault = null };
        }
        catch (Exception cause)
        {
            Failed(log, entry.Id, cause);
            var pause = TimeSpan.FromMinutes(Math.Min(15, 1 << Math.Min(4, entry.Failures)));
            return entry with { Failures = entry.Failures + 1, NextAt = clock.GetUtcNow() + pause, Fault = cause.Message };
        }
    }
}
