namespace DayBrief.Service.Features.Arrivals;

/// <summary>A brief was not signed when it should have been.</summary>
internal sealed record Reminder(string SiteId, DateOnly Date, DateTimeOffset At, string? BriefId);
