namespace DayBrief.Service.Features.Sending.Feed;

/// <summary>One notice in a feed.</summary>
internal sealed record FeedEntry(Guid Id, string Title, DateTimeOffset At, string Author, string Kind, string Link, string Summary)
{
    /// <summary>When it last changed: later than <see cref="At"/> once another has taken its place.</summary>
    public DateTimeOffset ChangedAt { get; init; } = At;

    /// <summary>Where that one is; null while it holds.</summary>
    public string? Successor { get; init; }
}
