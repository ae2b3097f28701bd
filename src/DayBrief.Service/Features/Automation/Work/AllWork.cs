using DayBrief.Service.Features.Sites;

namespace DayBrief.Service.Features.Automation.Work;

/// <summary>Which job does what.</summary>
internal sealed class AllWork(
    FetchSounding sounding, TakeDropFolder folder, FetchReports reports, PrepareDraft draft, RemindToSign reminder, WatchDay watch, BackUp backup, PurgeOld purge)
{
    public Task<RunResult> DoAsync(SiteJson site, Slot slot, CancellationToken stopping) => slot.Job switch
    {
        AutomationJob.Sounding => sounding.RunAsync(site, slot, stopping),
        AutomationJob.Reports => reports.RunAsync(site, slot, stopping),
        AutomationJob.DropFolder => Task.FromResult(folder.Run(site, slot)),
        AutomationJob.Draft => Task.FromResult(Draft(site, slot)),
        AutomationJob.Reminder => Task.FromResult(reminder.Run(site, slot)),
        _ => Task.FromResult(new RunResult(RunCode.NothingToDo)),
    };

    public RunResult Do(Slot slot) => slot.Job switch
    {
        AutomationJob.Backup => backup.Run(slot),
        AutomationJob.Purge => purge.Run(),
        _ => new(RunCode.NothingToDo),
    };

    /// <summary>A new draft is held at once against the reports that have come.</summary>
    private RunResult Draft(SiteJson site, Slot slot)
    {
        var result = draft.Run(site, slot);
        watch.Compare(site, slot.Date);
        return result;
    }
}
