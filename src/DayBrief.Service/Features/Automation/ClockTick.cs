using DayBrief.Service.Infrastructure;
using Hangfire;

namespace DayBrief.Service.Features.Automation;

/// <summary>Looks every minute what is due and puts it into the queue. Doubled ticks do no harm: the ledger lets each run begin
/// once.</summary>
internal sealed class ClockTick(DueRuns due, IBackgroundJobClient jobs)
{
    private const string Name = "clock-tick";

    [AutomaticRetry(Attempts = 0)]
    public void Run()
    {
        foreach (var slot in due.Now())
            Ask(jobs, slot);
    }

    /// <summary>Puts one run into the queue.</summary>
    public static void Ask(IBackgroundJobClient jobs, Slot slot) =>
        jobs.Enqueue<RunSlot>(Jobs.ByTheClock, run => run.RunAsync(slot, CancellationToken.None));

    public static void Schedule(IRecurringJobManager recurring, IBackgroundJobClient jobs)
    {
        recurring.AddOrUpdate<ClockTick>(Name, Jobs.ByTheClock, tick => tick.Run(), Cron.Minutely());
        // What was missed while the program was down does not wait for the next minute.
        jobs.Enqueue<ClockTick>(Jobs.ByTheClock, tick => tick.Run());
    }
}
