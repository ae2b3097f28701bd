namespace DayBrief.Service.Features.Briefs.Revisions;

/// <summary>What follows from a signature or a withdrawal.</summary>
internal enum Follower
{
    /// <summary>Open pages are told.</summary>
    Phones,

    /// <summary>The plain files beside the store.</summary>
    Files,

    /// <summary>The day's reports are held against it.</summary>
    Flags,

    /// <summary>Mail and webhooks.</summary>
    Sending,
}

/// <summary>One thing that is to follow from one signature or withdrawal, and how that went.</summary>
internal sealed record OutboxEntry
{
    public required Announcement Told { get; init; }

    public required Follower Follower { get; init; }

    public bool IsDone { get; init; }

    /// <summary>How often it failed.</summary>
    public int Failures { get; init; }

    /// <summary>Not before; of a waiting one.</summary>
    public DateTimeOffset NextAt { get; init; }

    /// <summary>What the last attempt failed for.</summary>
    public string? Fault { get; init; }

    public string Id => FormattableString.Invariant(
        $"{Told.BriefId}|{Told.Number}|{(Told.Kind == AnnouncementKind.Withdrawn ? Told.At.ToUnixTimeMilliseconds() : 0)}|{Follower}");

    /// <summary>A withdrawal changes no plain file.</summary>
    public static IEnumerable<OutboxEntry> Of(Announcement told) =>
        from follower in Enum.GetValues<Follower>()
        where follower != Follower.Files || told.Kind != AnnouncementKind.Withdrawn
        select new OutboxEntry { Told = told, Follower = follower, NextAt = told.At };
}

/// <summary>Does one of the things that follow. May be asked more than once for the same: then nothing is doubled.</summary>
internal interface IFollow
{
    Follower Follower { get; }

    Task FollowAsync(Announcement told);
}
