namespace DayBrief.Service.Features.Sending.Calendar;

/// <summary>One key time of a brief. Without an end it is a moment.</summary>
internal sealed record CalendarEvent(string Key, string Summary, string Description, DateTimeOffset From, DateTimeOffset? To = null)
{
    /// <summary>It was in an earlier revision, or its brief was withdrawn.</summary>
    public bool IsCancelled { get; init; }
}
