using DayBrief.Service.Features.Automation.Work;
using DayBrief.Service.Features.Briefs.Revisions;
using DayBrief.Service.Features.Sites;

namespace DayBrief.Service.Features.Automation;

/// <summary>Holds the day's reports against a brief as soon as it is signed, amended or withdrawn.</summary>
internal sealed class FollowSignatures(
    Announcements announcements, SiteStore sites, WatchDay watch, ILogger<FollowSignatures> log) : BackgroundService
{
    protected override async Task ExecuteAsync(CancellationToken stopping)
    {
        await foreach (var told in announcements.FollowAsync(stopping))
        {
            if (told.Kind != AnnouncementKind.DraftKept && sites.Find(told.SiteId) is { Automation: not null } site)
                Compare(site, told);
        }
    }

    private void Compare(SiteJson site, Announcement told)
    {
        try
        {
            watch.Compare(site, told.Date);
        }
        catch (Exception broken)
        {
            // The next reports compare again; one brief that cannot be compared must not end the watch over the others.
            AutomationLog.Broke(log, $"comparison of {told.BriefId}", broken);
        }
    }
}
