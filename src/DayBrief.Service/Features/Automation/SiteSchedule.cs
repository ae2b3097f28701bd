using DayBrief.Service.Features.Sites;
using DayBrief.Service.Infrastructure;

namespace DayBrief.Service.Features.Automation;

/// <summary>What is to be done for a site, and when: pure, from its settings, its zone and a day.</summary>
internal sealed record SiteSchedule(string SiteId, TimeZoneInfo Zone, SiteAutomationJson Automation)
{
    private const int DaysAhead = 2;

    /// <summary>Null for a site that has nothing done by itself, or whose settings cannot be used.</summary>
    public static SiteSchedule? Of(SiteJson site) =>
        site is { Id: { } id, TimeZone: { } zone, Automation: { } automation } && TimeZoneInfo.TryFindSystemTimeZoneById(zone, out var known)
            ? new(id, known, automation)
            : null;

    /// <summary>The zone of a site; UTC where it has none that is known.</summary>
    public static TimeZoneInfo ZoneOf(SiteJson site) =>
        site.TimeZone is { } zone && TimeZoneInfo.TryFindSystemTimeZoneById(zone, out var known) ? known : TimeZoneInfo.Utc;

    public DateOnly Today(DateTimeOffset now) => LocalClock.DateAt(now, Zone);

    /// <summary>The slots of a local day, in order of time.</summary>
    public IReadOnlyList<Slot> On(DateOnly date)
    {
        var once = new (AutomationJob Job, TimeOnly? At)[]
        {
            (AutomationJob.Sounding, Automation.SoundingAddress is null ? null : Automation.SoundingTime),
            (AutomationJob.Draft, Automation.DraftTime),
            (AutomationJob.Reminder, Automation.RemindTime),
        };
        var slots =
            from job in once
            where job.At is not null
            select new Slot(job.Job, SiteId, date, $"{job.At:HH:mm}", LocalClock.InstantOf(date, job.At!.Value, Zone));
        return [.. slots.Concat(Reports(date)).OrderBy(slot => slot.DueAt).ThenBy(slot => slot.Job)];
    }

    /// <summary>What ought to have begun by now: of the reports only the latest, for the earlier would fetch the same.</summary>
    public IEnumerable<Slot> DueAt(DateTimeOffset now)
    {
        var due = On(Today(now)).Where(slot => slot.DueAt <= now).ToArray();
        var reports = due.LastOrDefault(slot => slot.Job == AutomationJob.Reports);
        return due.Where(slot => slot.Job != AutomationJob.Reports || slot == reports);
    }

    /// <summary>The next slot of a job after a moment; null when it has none.</summary>
    public Slot? Next(AutomationJob job, DateTimeOffset now) =>
        Enumerable.Range(0, DaysAhead)
            .SelectMany(day => On(Today(now).AddDays(day)))
            .FirstOrDefault(slot => slot.Job == job && slot.DueAt > now);

    // Counted in elapsed time, so that an hour that the clocks show twice has its reports twice.
    private IEnumerable<Slot> Reports(DateOnly date)
    {
        if (!Automation.FetchesReports)
            yield break;
        var end = LocalClock.InstantOf(date, Automation.ReportsEnd, Zone);
        var every = TimeSpan.FromMinutes(Math.Clamp(Automation.ReportsEveryMinutes ?? SiteAutomationJson.UsualMinutes, 5, 240));
        for (var at = LocalClock.InstantOf(date, Automation.ReportsStart, Zone); at <= end; at += every)
            yield return new(AutomationJob.Reports, SiteId, date, $"{at.UtcDateTime:HHmm'Z'}", at);
    }
}
