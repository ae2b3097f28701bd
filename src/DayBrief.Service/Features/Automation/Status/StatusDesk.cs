using DayBrief.Service.Features.Arrivals;
using DayBrief.Service.Features.Automation.Work;
using DayBrief.Service.Features.Briefs.Revisions;
using DayBrief.Service.Features.Sites;
using DayBrief.Service.Infrastructure;

namespace DayBrief.Service.Features.Automation.Status;

/// <summary>Gathers what the status page shows.</summary>
internal sealed class StatusDesk(
    SiteStore sites,
    RunLedger ledger,
    InstallationSchedule installation,
    SiteDays days,
    ArrivalStore arrivals,
    ReportStore reports,
    FlagStore flags,
    ReminderStore reminders,
    BackUp backup,
    Outbox outbox,
    TimeProvider clock)
{
    private const int DaysBack = 7;

    private const int Signatures = 5;

    public StatusView View()
    {
        var now = clock.GetUtcNow();
        var runs = ledger.Since(now.AddDays(-DaysBack));
        return new(
            now,
            [.. sites.All().Where(site => site.Id is not null).Select(site => Of(site, runs, now))],
            [.. new[] { AutomationJob.Backup, AutomationJob.Purge }.Select(job => new JobStatus(job, Last(runs, job, Slot.Installation), installation.Next(job, now).DueAt))],
            [.. backup.Kept().Select(file => new BackupFile(file.Name, file.Length, file.LastWriteTimeUtc))],
            [.. outbox.Waiting().Concat(outbox.Latest(Signatures * Enum.GetValues<Follower>().Length)).DistinctBy(entry => entry.Id)]);
    }

    private SiteStatus Of(SiteJson site, IReadOnlyList<Run> runs, DateTimeOffset now)
    {
        var id = site.Id!;
        var zone = SiteSchedule.ZoneOf(site);
        var today = LocalClock.DateAt(now, zone);
        var schedule = SiteSchedule.Of(site);
        return new(
            id,
            site.Name ?? id,
            zone,
            schedule is not null,
            [.. Jobs(site).Select(job => new JobStatus(job, Last(runs, job, id), schedule?.Next(job, now)?.DueAt))],
            days.IsSigned(id, today) ? null : reminders.Of(id, today),
            flags.Of(id, today),
            arrivals.Of(id) is [var latest, ..] ? latest : null,
            reports.Latest(id, ReportKind.Observation, now.AddDays(-1), now.AddHours(1)),
            reports.Latest(id, ReportKind.Forecast, now.AddDays(-1), now.AddHours(1)));
    }

    /// <summary>The jobs that mean something for a site as it is set.</summary>
    public static IEnumerable<AutomationJob> Jobs(SiteJson site)
    {
        if (site.Automation is not { } automation)
            yield break;
        if (automation.SoundingAddress is not null)
            yield return AutomationJob.Sounding;
        yield return AutomationJob.DropFolder;
        if (automation.FetchesReports)
            yield return AutomationJob.Reports;
        yield return AutomationJob.Draft;
        if (automation.RemindTime is not null)
            yield return AutomationJob.Reminder;
    }

    private static Run? Last(IReadOnlyList<Run> runs, AutomationJob job, string siteId) =>
        runs.FirstOrDefault(run => run.Slot.Job == job && run.Slot.SiteId == siteId);
}
