using DayBrief.Service.Features.People;
using DayBrief.Service.Infrastructure;
using DayBrief.Service.Languages;
using Microsoft.AspNetCore.Http.HttpResults;

namespace DayBrief.Service.Features.Sites;

/// <summary>The page of one site: shows, adds, changes.</summary>
internal static class EditSite
{
    private static readonly SiteJson Usual = new() { GroundCover = "grass", GroundWetness = "normal", Units = "feet-and-knots" };

    internal static void Map(RouteGroupBuilder pages)
    {
        pages.MapGet("/new", (HttpRequest request) => Page(View(request, SiteFields.Of(Usual), null, [])));
        pages.MapGet("/{id}", Show);
    }

    internal static void MapForms(RouteGroupBuilder forms)
    {
        forms.MapPost("", (HttpContext context, SiteStore sites, AuditLog audit, CancellationToken stopping) =>
            KeepAsync(null, context, sites, audit, stopping));
        forms.MapPost("/{id}", KeepAsync);
    }

    internal static SitePageView View(HttpRequest request, SiteFields fields, KeptSite? kept, IReadOnlyList<ProblemError> errors) =>
        new(Language.Of(request), fields, kept, errors, request.Query.ContainsKey("kept"));

    internal static RazorComponentResult<SitePage> Page(SitePageView view, int status = StatusCodes.Status200OK) =>
        new(new Dictionary<string, object?> { [nameof(SitePage.Of)] = view }) { StatusCode = status };

    private static Results<RazorComponentResult<SitePage>, RazorComponentResult<NotFoundPage>> Show(string id, HttpRequest request, SiteStore sites) =>
        sites.FindKept(id) is { } kept ? Page(View(request, SiteFields.Of(kept.Site), kept, [])) : NotFoundPage.Result("page [not found]");

    private static async Task<Results<RedirectHttpResult, RazorComponentResult<SitePage>, RazorComponentResult<NotFoundPage>>> KeepAsync(
        string? id, HttpContext context, SiteStore sites, AuditLog audit, CancellationToken stopping)
    {
        var fields = await SiteFields.ReadAsync(context.Request, stopping);
        var kept = id is null ? null : sites.FindKept(id);
        if (id is not null && kept is null)
            return NotFoundPage.Result("page [not found]");
        var (site, errors) = SiteFormReading.Read(fields, kept?.Site);
        if (errors.Count > 0)
            return Page(View(context.Request, fields, kept, errors), StatusCodes.Status422UnprocessableEntity);
        var seen = kept is null ? 0 : SeenVersion.Of(fields[SeenVersion.Field]);
        if (sites.Save(site, seen) is null)
            return Page(View(context.Request, fields, kept, [Conflict(kept)]), StatusCodes.Status409Conflict);
        audit.Write(
            Who.Of(context),
            kept is null ? Language.Text("Added a site") : Language.Text("Changed a site"),
            site.Id!,
            kept is null ? null : string.Join(", ", SiteChange.Between(kept.Site, site)));
        return TypedResults.Redirect($"/sites/{site.Id}?kept");
    }

    private static ProblemError Conflict(KeptSite? kept) => kept is null
        ? new("A site with this short name is there already; choose another.", Field: "id")
        : SeenVersion.Conflict;
}
