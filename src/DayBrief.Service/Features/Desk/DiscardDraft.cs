using DayBrief.Service.Features.Briefs;
using DayBrief.Service.Features.Briefs.Revisions;
using DayBrief.Service.Features.People;
using DayBrief.Service.Languages;
using DayBrief.Texts;
using Microsoft.AspNetCore.Http.HttpResults;

namespace DayBrief.Service.Features.Desk;

/// <summary>Takes a draft that nobody signed off the desk and out of the lists. Nothing is deleted: what is kept next brings it
/// back, until old drafts are removed.</summary>
internal static class DiscardDraft
{
    internal static void Map(WebApplication app) =>
        app.MapPost("/desk/{id}/discard", Handle).ExcludeFromDescription().RequireAuthorization(Access.Instructor).RequireForm();

    private static Results<RedirectHttpResult, RazorComponentResult<DeskPage>, RazorComponentResult<NotFoundPage>> Handle(
        string id, HttpContext context, BriefStore briefs, RevisionStore revisions, Keeping keeping, DeskViews views, BriefDesk desk, AuditLog audit)
    {
        if (briefs.Find(id) is not { Demonstration: false } draft)
            return NotFoundPage.Result("brief [not found]");
        if (revisions.Latest(id) is not null)
            return Refused(Words.Of("This brief was signed: it can be withdrawn, not discarded."));
        if (briefs.Save(draft with { DiscardedAt = desk.Now, EditedBy = DeskViews.Editor(context), EditedAt = desk.Now }, draft.Version) is null)
            return Refused(Words.Of("Somebody has changed the draft meanwhile. Look at it again, then discard it."));
        audit.Write(Who.Of(context), Language.Text("Discarded a draft"), id, draft.SiteId);
        return TypedResults.Redirect("/desk");

        RazorComponentResult<DeskPage> Refused(Words why) => OpenDesk.Page(
            views.Of(keeping.Open(briefs.Find(id)!), context) with { SignErrors = [new(why)] }, StatusCodes.Status409Conflict);
    }
}
