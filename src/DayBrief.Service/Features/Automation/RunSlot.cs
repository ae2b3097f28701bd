using DayBrief.Service.Features.Automation.Work;
using DayBrief.Service.Features.Sites;
using DayBrief.Service.Infrastructure.Outgoing;
using Hangfire;

namespace DayBrief.Service.Features.Automation;

/// <summary>Runs one slot and writes down how it ended. Run twice, it works once.</summary>
internal sealed class RunSlot(RunLedger ledger, SiteStore sites, AllWork work, TimeProvider clock, ILogger<RunSlot> log)
{
    [AutomaticRetry(Attempts = 0)]
    public async Task RunAsync(Slot slot, CancellationToken stopping)
    {
        if (ledger.TryBegin(slot, clock.GetUtcNow()) is not { } run)
            return;
        try
        {
            Done(run, await DoAsync(slot, stopping));
        }
        catch (OperationCanceledException) when (stopping.IsCancellationRequested)
        {
            // The program stops: the next start takes it up again.
            ledger.End(run with { State = RunState.Waiting, NextAt = clock.GetUtcNow() });
            throw;
        }
        catch (FetchException failed)
        {
            Failed(run, FetchFailure.Of(failed));
        }
        catch (RunFailedException failed)
        {
            Failed(run, failed);
        }
        catch (Exception broken)
        {
            AutomationLog.Broke(log, slot.Key, broken);
            Failed(run, new(new(RunCode.Broken, broken.Message), cause: broken));
        }
    }

    private async Task<RunResult> DoAsync(Slot slot, CancellationToken stopping)
    {
        if (slot.SiteId == Slot.Installation)
            return work.Do(slot);
        return sites.Find(slot.SiteId) is { } site ? await work.DoAsync(site, slot, stopping) : new(RunCode.NothingToDo);
    }

    private void Done(Run run, RunResult result)
    {
        ledger.End(run with { State = RunState.Done, EndedAt = clock.GetUtcNow(), Result = result });
        AutomationLog.Ended(log, run.Slot.Key, RunText.Of(result, Languages.Language.English), null);
    }

    private void Failed(Run run, RunFailedException failed)
    {
        var now = clock.GetUtcNow();
        var next = failed.MayPass ? RetryPlan.Next(run.Slot, run.Attempts, now, failed.RetryAfter) : null;
        ledger.End(run with { State = next is null ? RunState.Failed : RunState.Waiting, EndedAt = now, NextAt = next, Result = failed.Result });
        AutomationLog.Failed(log, run.Slot.Key, RunText.Of(failed.Result, Languages.Language.English), null);
    }
}
