using DayBrief.Service.Features.Automation.Work;
using DayBrief.Service.Features.Sites;
using DayBrief.Service.Infrastructure;

namespace DayBrief.Service.Features.Automation;

/// <summary>What ought to run now: slots of today that nobody has begun (also those missed while the program was down), runs
/// to be tried again, and files that have come.</summary>
internal sealed class DueRuns(
    SiteStore sites, RunLedger ledger, InstallationSchedule installation, DropFolders folders, TimeProvider clock)
{
    public IReadOnlyList<Slot> Now()
    {
        var now = clock.GetUtcNow();
        var all = sites.All();
        return
        [
            .. Installation(now)
                .Concat(all.Select(SiteSchedule.Of).OfType<SiteSchedule>().SelectMany(schedule => schedule.DueAt(now)))
                .Concat(ledger.Unfinished(now))
                .DistinctBy(slot => slot.Key)
                .Where(slot => ledger.IsOpen(slot, now))
                .OrderBy(slot => slot.DueAt).ThenBy(slot => slot.Job),
            .. all.Where(site => site.Id is not null && folders.HasSettled(site.Id)).Select(site => Files(site, now)),
        ];
    }

    // A new installation has missed nothing.
    private IEnumerable<Slot> Installation(DateTimeOffset now) =>
        installation.On(DateOnly.FromDateTime(now.UtcDateTime)).Where(slot => slot.DueAt <= now && slot.DueAt >= ledger.FirstUsedAt);

    private static Slot Files(SiteJson site, DateTimeOffset now)
    {
        var zone = SiteSchedule.ZoneOf(site);
        return new(AutomationJob.DropFolder, site.Id!, LocalClock.DateAt(now, zone), $"{now.UtcDateTime:HHmm'Z'}", now);
    }
}
