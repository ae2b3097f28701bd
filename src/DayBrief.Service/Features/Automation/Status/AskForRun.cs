using DayBrief.Service.Features.People;
using DayBrief.Service.Features.Sites;
using DayBrief.Service.Infrastructure;
using Hangfire;
using Microsoft.AspNetCore.Http.HttpResults;

namespace DayBrief.Service.Features.Automation.Status;

/// <summary>"Run now" of the status page.</summary>
internal static class AskForRun
{
    internal static void Map(WebApplication app) =>
        app.MapPost(ShowStatus.Path, HandleAsync).RequireAuthorization(Access.Instructor).RequireForm().ExcludeFromDescription();

    private static async Task<RedirectHttpResult> HandleAsync(
        HttpContext context, SiteStore sites, IBackgroundJobClient jobs, AuditLog audit, TimeProvider clock, CancellationToken stopping)
    {
        var form = await context.Request.ReadFormAsync(stopping);
        var (job, site) = (Job(form["job"].ToString()), form["site"].ToString());
        var now = clock.GetUtcNow();
        ClockTick.Ask(jobs, Slot.ByHand(job, site, Day(sites, job, site, now), now));
        audit.Write(Who.Of(context), Languages.Language.Text("Asked for a run"), site.Length > 0 ? site : "installation", Choice.NameOf(job));
        return TypedResults.Redirect(ShowStatus.Path + "?asked");
    }

    private static AutomationJob Job(string name) =>
        Choice.Parse<AutomationJob>(name) ?? throw InvalidInputException.Field("job", $"Needs one of {string.Join(", ", Choice.Names<AutomationJob>())}; it is \"{name}\".");

    private static DateOnly Day(SiteStore sites, AutomationJob job, string siteId, DateTimeOffset now)
    {
        if (job is AutomationJob.Backup or AutomationJob.Purge)
        {
            return siteId.Length == 0
                ? DateOnly.FromDateTime(now.UtcDateTime)
                : throw InvalidInputException.Field("site", "This is done for the whole installation, not for a site.");
        }

        return sites.Find(siteId) is { } site
            ? LocalClock.DateAt(now, SiteSchedule.ZoneOf(site))
            : throw InvalidInputException.Field("site", $"No site is kept under \"{siteId}\".");
    }
}
