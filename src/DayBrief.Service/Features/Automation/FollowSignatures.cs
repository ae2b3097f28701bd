using DayBrief.Service.Features.Automation.Work;
using DayBrief.Service.Features.Briefs.Revisions;
using DayBrief.Service.Features.Sites;

namespace DayBrief.Service.Features.Automation;

/// <summary>Holds the day's reports against a brief as soon as it is signed, amended or withdrawn.</summary>
internal sealed class FollowSignatures(SiteStore sites, WatchDay watch) : IFollow
{
    public Follower Follower => Follower.Flags;

    public Task FollowAsync(Announcement told)
    {
        if (sites.Find(told.SiteId) is { Automation: not null } site)
            watch.Compare(site, told.Date);
        return Task.CompletedTask;
    }
}
