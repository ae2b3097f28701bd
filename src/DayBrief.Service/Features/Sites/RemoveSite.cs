using DayBrief.Service.Features.People;
using DayBrief.Service.Infrastructure;
using DayBrief.Service.Languages;
using DayBrief.Texts;
using Microsoft.AspNetCore.Http.HttpResults;

namespace DayBrief.Service.Features.Sites;

/// <summary>Deletes a site that no brief was made for.</summary>
internal static class RemoveSite
{
    private static readonly Words InUse = "Briefs have been made for this site; it stays, so that they stay readable.";
    private static readonly Words Changed = "Somebody else has changed this site meanwhile; it is still there. Look at it again before deleting it.";

    internal static void Map(RouteGroupBuilder forms) => forms.MapPost("/{id}/delete", HandleFormAsync);

    internal static void MapApi(RouteGroupBuilder api) =>
        api.MapDelete("/{id}", Handle).WithName(nameof(RemoveSite)).WithSummary("Delete a site that no brief was made for.").RequireAuthorization(Access.Administrator);

    private static async Task<Results<RedirectHttpResult, RazorComponentResult<SitePage>, RazorComponentResult<NotFoundPage>>> HandleFormAsync(
        string id, HttpContext context, SiteStore sites, SiteUse use, AuditLog audit, CancellationToken stopping)
    {
        var form = await context.Request.ReadFormAsync(stopping);
        if (sites.FindKept(id) is not { } kept)
            return NotFoundPage.Result("page [not found]");
        if (Remove(id, SeenVersion.Of(form[SeenVersion.Field]), context, sites, use, audit) is { } refused)
            return EditSite.Page(EditSite.View(context.Request, SiteFields.Of(kept.Site), kept, [new(refused)]), StatusCodes.Status409Conflict);
        return TypedResults.Redirect("/sites");
    }

    private static Results<NoContent, ProblemHttpResult> Handle(
        string id, HttpContext context, SiteStore sites, SiteUse use, AuditLog audit)
    {
        if (sites.FindKept(id) is null)
            return TypedResults.Problem(Problem.NotFound($"No site is kept under \"{id}\"."));
        var refused = Remove(id, SiteTag.Expected(context.Request), context, sites, use, audit);
        return refused is null ? TypedResults.NoContent() : TypedResults.Problem(Problem.Conflict(refused.ToString()));
    }

    private static Words? Remove(string id, int? expected, HttpContext context, SiteStore sites, SiteUse use, AuditLog audit)
    {
        if (use.HasBriefs(id))
            return InUse;
        if (!sites.Remove(id, expected))
            return Changed;
        audit.Write(Who.Of(context), Language.Text("Deleted a site"), id);
        return null;
    }
}
