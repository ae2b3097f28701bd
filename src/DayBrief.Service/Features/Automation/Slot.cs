using DayBrief.Service.Infrastructure;

namespace DayBrief.Service.Features.Automation;

/// <summary>One thing to do once: a job, for a site, on one of its local days, at one of the day's times.</summary>
/// <param name="Job">What.</param>
/// <param name="SiteId">For which site; empty for the whole installation.</param>
/// <param name="Date">The site's local day.</param>
/// <param name="Name">Which of that day's: the local time set, a time in UTC ("0920Z"), or one asked for by hand.</param>
/// <param name="DueAt">When.</param>
internal sealed record Slot(AutomationJob Job, string SiteId, DateOnly Date, string Name, DateTimeOffset DueAt)
{
    /// <summary>For the whole installation, no site.</summary>
    public const string Installation = "";

    /// <summary>Under which a slot can be done only once.</summary>
    public string Key => $"{Choice.NameOf(Job)}|{SiteId}|{Date:yyyy-MM-dd}|{Name}";

    /// <summary>One that a person asks for now.</summary>
    public static Slot ByHand(AutomationJob job, string siteId, DateOnly date, DateTimeOffset now) =>
        new(job, siteId, date, $"by hand {now.UtcDateTime:HHmmss'Z'}", now);
}
