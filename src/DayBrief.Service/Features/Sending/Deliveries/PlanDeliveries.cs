using DayBrief.Service.Features.Sending.Notices;
using DayBrief.Service.Features.Sites;

namespace DayBrief.Service.Features.Sending.Deliveries;

/// <summary>Enters into the ledger what the addresses of the sites are to be told. May run any number of times.</summary>
internal sealed class PlanDeliveries(SiteStore sites, TargetStore targets, NoticeStore notices, DeliveryLedger ledger, TimeProvider clock)
{
    /// <summary>A revision is signed a moment before it is in the store.</summary>
    private static readonly TimeSpan Overlap = TimeSpan.FromMinutes(10);

    /// <summary>So that a quiet installation does not write every minute.</summary>
    private static readonly TimeSpan Lag = TimeSpan.FromHours(1);

    public void Run()
    {
        var now = clock.GetUtcNow();
        var told = Told().ToArray();
        if (told.Length == 0)
            return;
        var fresh = notices.Since(told.Min(target => From(target.Since, target.PlannedTo)));
        foreach (var (target, since, plannedTo) in told)
        {
            var due = fresh.Where(notice => notice.Revision.SiteId == target.SiteId && notice.At >= From(since, plannedTo)).ToArray();
            ledger.Add(due.Select(notice => Delivery.Of(notice, target)));
            if (due.Any(notice => notice.At > plannedTo) || now - plannedTo > Lag)
                targets.Planned(target, now);
        }
    }

    private static DateTimeOffset From(DateTimeOffset since, DateTimeOffset plannedTo) =>
        plannedTo - Overlap > since ? plannedTo - Overlap : since;

    private IEnumerable<(Target Target, DateTimeOffset Since, DateTimeOffset PlannedTo)> Told()
    {
        foreach (var site in sites.All())
        {
            targets.Follow(site);
            foreach (var target in Target.Of(site))
            {
                if (targets.Find(target) is { } known)
                    yield return (target, known.Since, known.PlannedTo);
            }
        }
    }
}
