using DayBrief.Service.Features.Briefs.Revisions;
using DayBrief.Service.Features.Sending.Deliveries;
using DayBrief.Service.Features.Sites;
using DayBrief.Service.Infrastructure;
using Hangfire;

namespace DayBrief.Service.Features.Sending;

/// <summary>Sets the sending going: every minute, and for what an earlier start left. What is signed or withdrawn sets it going too.</summary>
internal sealed class StartSending(
    IRecurringJobManager recurring, IBackgroundJobClient jobs, SiteStore sites, TargetStore targets, DeliveryLedger ledger, TimeProvider clock)
    : IHostedService, IDisposable
{
    private const string Name = "send-out";

    /// <summary>How long the ledger remembers.</summary>
    private static readonly TimeSpan Remembered = TimeSpan.FromDays(400);

    public Task StartAsync(CancellationToken cancellationToken)
    {
        sites.Changed += targets.Follow;
        foreach (var site in sites.All())
            targets.Follow(site);
        ledger.Forget(clock.GetUtcNow() - Remembered);
        recurring.AddOrUpdate<SendOut>(Name, Jobs.ByTheClock, send => send.RunAsync(CancellationToken.None), Cron.Minutely());
        Ask(jobs);
        return Task.CompletedTask;
    }

    /// <summary>Sends what is due as soon as a worker is free.</summary>
    public static void Ask(IBackgroundJobClient jobs) =>
        jobs.Enqueue<SendOut>(Jobs.ByTheClock, send => send.RunAsync(CancellationToken.None));

    public Task StopAsync(CancellationToken cancellationToken) => Task.CompletedTask;

    public void Dispose() => sites.Changed -= targets.Follow;
}

/// <summary>Enters into the ledger of deliveries who is to be told, and asks for the sending.</summary>
internal sealed class FollowBySending(PlanDeliveries plan, IBackgroundJobClient jobs) : IFollow
{
    public Follower Follower => Follower.Sending;

    public Task FollowAsync(Announcement told)
    {
        plan.Run();
        StartSending.Ask(jobs);
        return Task.CompletedTask;
    }
}
