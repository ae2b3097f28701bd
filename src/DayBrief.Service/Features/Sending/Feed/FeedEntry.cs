namespace DayBrief.Service.Features.Sending.Feed;

/// <summary>One notice in a feed.</summary>
internal sealed record FeedEntry(Guid Id, string Title, DateTimeOffset At, string Author, string Kind, string Link, string Summary);
