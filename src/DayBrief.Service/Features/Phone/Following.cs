using System.Runtime.CompilerServices;
using System.Threading.Channels;
using DayBrief.Service.Features.Briefs.Revisions;

namespace DayBrief.Service.Features.Phone;

/// <summary>Tells the followers of a page its state: at once, whenever something was signed or withdrawn, and now and then, so
/// that both ends know that the line still stands and that midnight has passed.</summary>
internal sealed class Following(Announcements announcements, IHostApplicationLifetime lifetime, TimeProvider clock)
{
    /// <summary>Shorter than the idle limits of proxies and mobile networks, 30 s and more. Common practice, no source.</summary>
    private static readonly TimeSpan Beat = TimeSpan.FromSeconds(20);

    /// <summary>States until the reader leaves or the program stops.</summary>
    public async IAsyncEnumerable<string> StatesAsync(Func<string> state, [EnumeratorCancellation] CancellationToken stopping)
    {
        using var either = CancellationTokenSource.CreateLinkedTokenSource(lifetime.ApplicationStopping, stopping);
        var calls = Channel.CreateBounded<bool>(new BoundedChannelOptions(1) { FullMode = BoundedChannelFullMode.DropWrite });
        calls.Writer.TryWrite(true);
        await using var beat = clock.CreateTimer(_ => calls.Writer.TryWrite(true), null, Beat, Beat);
        var listening = ListenAsync(calls.Writer, either.Token);
        try
        {
            while (await calls.Reader.WaitToReadAsync(CancellationToken.None))
            {
                calls.Reader.TryRead(out _);
                yield return state();
            }
        }
        finally
        {
            await either.CancelAsync();
            await listening;
        }
    }

    private async Task ListenAsync(ChannelWriter<bool> calls, CancellationToken stopping)
    {
        try
        {
            await foreach (var announcement in announcements.FollowAsync(stopping))
            {
                if (announcement.Kind != AnnouncementKind.DraftKept)
                    calls.TryWrite(true);
            }
        }
        catch (OperationCanceledException)
        {
            // The reader has left or the program stops: both are ends, not errors.
        }
        finally
        {
            calls.TryComplete();
        }
    }
}
