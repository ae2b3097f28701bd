using DayBrief.Service.Features.People;
using DayBrief.Service.Infrastructure;
using DayBrief.Service.Languages;
using Microsoft.AspNetCore.Http.HttpResults;

namespace DayBrief.Service.Features.Sites;

/// <summary>Adds a site, or replaces one that is still at the version that the request names.</summary>
internal static class PutSite
{
    internal static void MapApi(RouteGroupBuilder api) =>
        api.MapPut("/{id}", Handle).WithName(nameof(PutSite))
            .WithSummary("Add a site, or replace one: then with If-Match (the entity tag of GET, or * for whatever is there), which refuses when somebody else was first. If-None-Match: * only adds.")
            .ProducesProblem(StatusCodes.Status412PreconditionFailed)
            .ProducesProblem(StatusCodes.Status428PreconditionRequired)
            .RequireAuthorization(Access.Administrator);

    private static Results<Ok<SiteJson>, Created<SiteJson>, ProblemHttpResult> Handle(
        string id, SiteJson site, HttpContext context, SiteStore sites, AuditLog audit)
    {
        SiteId.Check(id);
        if (site.Id is not null && site.Id != id)
            throw InvalidInputException.Field("site.id", $"It is \"{site.Id}\", but the address of the request says \"{id}\".");
        var named = site with { Id = id };
        named.ToSite();
        var (asks, before) = (SiteTag.IsGiven(context.Request), sites.Find(id));
        if (asks && before is null && SiteTag.Expected(context.Request) is null)
            return Refused("There is no such site to replace.", StatusCodes.Status412PreconditionFailed);
        if (sites.Save(named, asks ? SiteTag.Expected(context.Request) : 0) is not { } version)
        {
            // RFC 6585, section 3.
            return asks
                ? Refused("The site is not at the version that the request names; read it again.", StatusCodes.Status412PreconditionFailed)
                : Refused("The site is there already. Send If-Match with the ETag that GET gave, or * to replace whatever is there.", StatusCodes.Status428PreconditionRequired);
        }

        SiteTag.Put(context.Response, version);
        audit.Write(
            Who.Of(context),
            before is null ? Language.Text("Added a site") : Language.Text("Changed a site"),
            id,
            before is null ? null : string.Join(", ", SiteChange.Between(before, named)));
        return before is null ? TypedResults.Created($"/api/v1/sites/{id}", named) : TypedResults.Ok(named);
    }

    private static ProblemHttpResult Refused(string why, int status) => TypedResults.Problem(Problem.Conflict(why, status));
}
