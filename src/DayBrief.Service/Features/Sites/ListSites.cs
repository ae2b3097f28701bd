using DayBrief.Service.Features.People;
using DayBrief.Service.Infrastructure;
using DayBrief.Service.Languages;
using Microsoft.AspNetCore.Http.HttpResults;

namespace DayBrief.Service.Features.Sites;

/// <summary>All sites, and one of them: as a page and for programs.</summary>
internal static class ListSites
{
    public sealed record Response(IReadOnlyList<SiteJson> Sites);

    internal static void Map(RouteGroupBuilder pages) => pages.MapGet("", Show);

    internal static void MapApi(RouteGroupBuilder api)
    {
        api.MapGet("", All).WithName(nameof(ListSites)).WithSummary("All sites.").RequireAuthorization(Access.Reader);
        api.MapGet("/{id}", One).WithName("ShowSite").WithSummary("One site; its version is the entity tag.").RequireAuthorization(Access.Reader);
    }

    internal static RazorComponentResult<SiteList> Page(HttpRequest request, SiteStore sites, ImportPlan? plan = null, IReadOnlyList<ProblemError>? errors = null, bool applied = false) =>
        new(new Dictionary<string, object?>
        {
            [nameof(SiteList.Of)] = new SiteListView(Language.Of(request), sites.All(), plan, errors ?? [], applied),
        })
        { StatusCode = errors is { Count: > 0 } ? StatusCodes.Status422UnprocessableEntity : StatusCodes.Status200OK };

    private static RazorComponentResult<SiteList> Show(HttpRequest request, SiteStore sites) =>
        Page(request, sites, applied: request.Query.ContainsKey("imported"));

    private static Ok<Response> All(HttpContext context, SiteStore sites) =>
        TypedResults.Ok(new Response([.. sites.All().Select(site => SeenBy(context, site))]));

    /// <summary>What runs by itself is the administrators' business: its addresses may hold a key.</summary>
    private static SiteJson SeenBy(HttpContext context, SiteJson site) =>
        Who.Of(context) is { Role: Role.Administrator } ? site : site with { Automation = null, Sending = null };

    private static Results<Ok<SiteJson>, ProblemHttpResult> One(string id, HttpContext context, SiteStore sites)
    {
        if (sites.FindKept(id) is not { } kept)
            return TypedResults.Problem(Problem.NotFound($"No site is kept under \"{id}\"."));
        SiteTag.Put(context.Response, kept.Version);
        return TypedResults.Ok(SeenBy(context, kept.Site));
    }
}
