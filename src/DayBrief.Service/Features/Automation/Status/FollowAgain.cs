using DayBrief.Service.Features.Briefs.Revisions;
using DayBrief.Service.Features.People;
using Microsoft.AspNetCore.Http.HttpResults;

namespace DayBrief.Service.Features.Automation.Status;

/// <summary>"Do it again" of the status page: one of the things that follow from a signature, whatever became of it.</summary>
internal static class FollowAgain
{
    internal const string Path = ShowStatus.Path + "/signatures";

    internal static void Map(WebApplication app) =>
        app.MapPost(Path, HandleAsync).RequireAuthorization(Access.Instructor).RequireForm().ExcludeFromDescription();

    private static async Task<Results<RedirectHttpResult, RazorComponentResult<NotFoundPage>>> HandleAsync(
        HttpContext context, Outbox outbox, FollowUp followUp, AuditLog audit, CancellationToken stopping)
    {
        var form = await context.Request.ReadFormAsync(stopping);
        if (outbox.Find(form["entry"].ToString()) is not { } entry)
            return NotFoundPage.Result("page [not found]");
        audit.Write(Who.Of(context), Languages.Language.Text("Asked for it again"), entry.Told.BriefId, $"{entry.Follower}, revision {entry.Told.Number}");
        await followUp.AgainAsync(entry);
        return TypedResults.Redirect(ShowStatus.Path + "#signatures");
    }
}
