using Hangfire;

namespace DayBrief.Service.Features.Automation;

/// <summary>Sets the minute's tick going when the program starts.</summary>
internal sealed class StartClock(IRecurringJobManager recurring, IBackgroundJobClient jobs) : IHostedService
{
    public Task StartAsync(CancellationToken stopping)
    {
        ClockTick.Schedule(recurring, jobs);
        return Task.CompletedTask;
    }

    public Task StopAsync(CancellationToken stopping) => Task.CompletedTask;
}
