using DayBrief.Service.Features.People;
using DayBrief.Service.Infrastructure;
using DayBrief.Service.Languages;
using Microsoft.AspNetCore.Http.HttpResults;

namespace DayBrief.Service.Features.Sites;

/// <summary>Adds or replaces a site; with If-Match only while it is still at that version.</summary>
internal static class PutSite
{
    internal static void MapApi(RouteGroupBuilder api) =>
        api.MapPut("/{id}", Handle).WithName(nameof(PutSite))
            .WithSummary("Add or replace a site. If-Match (the entity tag of GET) refuses when somebody else was first; If-None-Match: * only adds.")
            .RequireAuthorization(Access.Administrator);

    private static Results<Ok<SiteJson>, Created<SiteJson>, ProblemHttpResult> Handle(
        string id, SiteJson site, HttpContext context, SiteStore sites, AuditLog audit)
    {
        SiteId.Check(id);
        if (site.Id is not null && site.Id != id)
            throw InvalidInputException.Field("site.id", $"id is \"{site.Id}\", but the address says \"{id}\".");
        var named = site with { Id = id };
        named.ToSite();
        var before = sites.Find(id);
        if (sites.Save(named, SiteTag.Expected(context.Request)) is not { } version)
        {
            return TypedResults.Problem(Problem.Conflict(
                "The site is not at the version that the request names; read it again.", StatusCodes.Status412PreconditionFailed));
        }

        SiteTag.Put(context.Response, version);
        audit.Write(
            Who.Of(context),
            before is null ? Language.Text("Added a site") : Language.Text("Changed a site"),
            id,
            before is null ? null : string.Join(", ", SiteChange.Between(before, named)));
        return before is null ? TypedResults.Created($"/api/v1/sites/{id}", named) : TypedResults.Ok(named);
    }
}
