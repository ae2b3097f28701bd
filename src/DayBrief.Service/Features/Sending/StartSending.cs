using DayBrief.Service.Features.Briefs.Revisions;
using DayBrief.Service.Features.Sending.Deliveries;
using DayBrief.Service.Features.Sites;
using DayBrief.Service.Infrastructure;
using Hangfire;

namespace DayBrief.Service.Features.Sending;

/// <summary>Sets the sending going: every minute, when something is signed or withdrawn, and for what an earlier start left.</summary>
internal sealed class StartSending(
    Announcements announcements, IRecurringJobManager recurring, IBackgroundJobClient jobs, SiteStore sites, TargetStore targets, DeliveryLedger ledger, TimeProvider clock)
    : BackgroundService
{
    private const string Name = "send-out";

    /// <summary>How long the ledger remembers.</summary>
    private static readonly TimeSpan Remembered = TimeSpan.FromDays(400);

    public override Task StartAsync(CancellationToken cancellationToken)
    {
        sites.Changed += targets.Follow;
        foreach (var site in sites.All())
            targets.Follow(site);
        ledger.Forget(clock.GetUtcNow() - Remembered);
        recurring.AddOrUpdate<SendOut>(Name, Jobs.ByTheClock, send => send.RunAsync(CancellationToken.None), Cron.Minutely());
        Ask(jobs);
        return base.StartAsync(cancellationToken);
    }

    /// <summary>Sends what is due as soon as a worker is free.</summary>
    public static void Ask(IBackgroundJobClient jobs) =>
        jobs.Enqueue<SendOut>(Jobs.ByTheClock, send => send.RunAsync(CancellationToken.None));

    public override void Dispose()
    {
        sites.Changed -= targets.Follow;
        base.Dispose();
    }

    protected override async Task ExecuteAsync(CancellationToken stoppingToken)
    {
        await foreach (var announcement in announcements.FollowAsync(stoppingToken))
        {
            if (announcement.Kind is AnnouncementKind.Published or AnnouncementKind.Amended or AnnouncementKind.Withdrawn)
                Ask(jobs);
        }
    }
}
