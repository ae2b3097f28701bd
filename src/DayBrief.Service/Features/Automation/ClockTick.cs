using DayBrief.Service.Infrastructure;
using Hangfire;
using Hangfire.States;

namespace DayBrief.Service.Features.Automation;

/// <summary>Looks every minute what is due and puts it into the queue. Doubled ticks do no harm: the ledger lets each run begin
/// once.</summary>
internal sealed class ClockTick(DueRuns due, IBackgroundJobClient jobs)
{
    private const string Name = "clock-tick";

    [AutomaticRetry(Attempts = 0)]
    public void Run()
    {
        // What is due together at one site goes in the order of the jobs: the ascent before the draft, the draft before the
        // reminder. Sites wait for nobody.
        foreach (var site in due.Now().GroupBy(slot => slot.SiteId))
        {
            string? before = null;
            foreach (var slot in site.OrderBy(slot => slot.Job))
                before = before is null ? Ask(jobs, slot) : AskAfter(jobs, before, slot);
        }
    }

    /// <summary>Puts one run into the queue.</summary>
    public static string Ask(IBackgroundJobClient jobs, Slot slot) =>
        jobs.Enqueue<RunSlot>(Jobs.ByTheClock, run => run.RunAsync(slot, CancellationToken.None));

    private static string AskAfter(IBackgroundJobClient jobs, string before, Slot slot) => jobs.ContinueJobWith<RunSlot>(
        before, run => run.RunAsync(slot, CancellationToken.None), new EnqueuedState(Jobs.ByTheClock), JobContinuationOptions.OnAnyFinishedState);

    public static void Schedule(IRecurringJobManager recurring, IBackgroundJobClient jobs)
    {
        recurring.AddOrUpdate<ClockTick>(Name, Jobs.ByTheClock, tick => tick.Run(), Cron.Minutely());
        // What was missed while the program was down does not wait for the next minute.
        jobs.Enqueue<ClockTick>(Jobs.ByTheClock, tick => tick.Run());
    }
}
