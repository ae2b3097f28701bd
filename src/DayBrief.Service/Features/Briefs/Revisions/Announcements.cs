using System.Collections.Concurrent;
using System.Runtime.CompilerServices;
using System.Threading.Channels;

namespace DayBrief.Service.Features.Briefs.Revisions;

internal enum AnnouncementKind
{
    /// <summary>The first revision was signed.</summary>
    Published,

    /// <summary>A later revision was signed.</summary>
    Amended,

    /// <summary>The brief was taken back.</summary>
    Withdrawn,

    /// <summary>Somebody kept another version of the draft.</summary>
    DraftKept,
}

/// <summary>Something happened to a brief just now: to its revision of that number, or to that version of its draft.</summary>
internal sealed record Announcement(AnnouncementKind Kind, string BriefId, string SiteId, DateOnly Date, int Number, string? By, DateTimeOffset At);

/// <summary>Tells everyone who follows, while the program runs. What must survive a restart is read from the stores.</summary>
internal sealed class Announcements
{
    private readonly ConcurrentDictionary<Guid, Channel<Announcement>> _followers = new();

    public int Followers => _followers.Count;

    public void Tell(Announcement announcement)
    {
        foreach (var follower in _followers.Values)
            follower.Writer.TryWrite(announcement);
    }

    /// <summary>All announcements from the call on. A follower who does not read loses the oldest.</summary>
    public IAsyncEnumerable<Announcement> FollowAsync(CancellationToken stopping)
    {
        var id = Guid.NewGuid();
        var channel = Channel.CreateBounded<Announcement>(new BoundedChannelOptions(64) { FullMode = BoundedChannelFullMode.DropOldest });
        _followers[id] = channel;
        return ReadAsync(id, channel, stopping);
    }

    private async IAsyncEnumerable<Announcement> ReadAsync(Guid id, Channel<Announcement> channel, [EnumeratorCancellation] CancellationToken stopping)
    {
        try
        {
            await foreach (var announcement in channel.Reader.ReadAllAsync(stopping))
                yield return announcement;
        }
        finally
        {
            _followers.TryRemove(id, out _);
        }
    }
}
