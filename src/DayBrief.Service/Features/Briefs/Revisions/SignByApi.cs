using DayBrief.Service.Features.People;
using DayBrief.Service.Infrastructure;
using Microsoft.AspNetCore.Http.HttpResults;

namespace DayBrief.Service.Features.Briefs.Revisions;

/// <summary>Revisions for programs: read them, sign a draft, withdraw a brief.</summary>
internal static class SignByApi
{
    /// <param name="Version">The version of the draft that is signed; the one that is kept now when left out.</param>
    /// <param name="Reason">Why it is amended; needed from the second revision on.</param>
    public sealed record Request(int? Version, string? Reason);

    /// <param name="Reason">Why it is withdrawn.</param>
    public sealed record WithdrawalRequest(string? Reason);

    internal static void Map(RouteGroupBuilder api)
    {
        api.MapGet("/briefs/{id}/revisions", List).WithName("ListRevisions").WithSummary("The signed revisions of a brief, the first first.");
        api.MapPost("/briefs/{id}/revisions", SignAsync).WithName(nameof(SignByApi)).WithSummary("Sign the draft as the next revision.")
            .RequireAuthorization(Access.Signer);
        api.MapPost("/briefs/{id}/withdrawal", Withdraw).WithName("WithdrawBrief").WithSummary("Withdraw a signed brief; its readers see the reason.")
            .RequireAuthorization(Access.Signer);
    }

    private static Ok<RevisionJson[]> List(string id, RevisionStore revisions) =>
        TypedResults.Ok(revisions.Of(id).Select(RevisionJson.Of).ToArray());

    private static async Task<Results<Created<RevisionJson>, ProblemHttpResult>> SignAsync(
        string id, Request? request, HttpContext context, BriefStore briefs, Signing signing)
    {
        if (briefs.Find(id) is not { } draft)
            return TypedResults.Problem(Problem.NotFound($"No brief is kept under \"{id}\"."));
        var outcome = await signing.SignAsync(id, request?.Version ?? draft.Version, SignerOf(context), request?.Reason);
        if (outcome.Revision is not { } revision)
        {
            return TypedResults.Problem(Problem.Conflict(
                $"The draft has changed: it is at version {outcome.Newer!.Version}, kept by {outcome.Newer.EditedBy ?? "somebody"}. Read it, then sign that version.", "version"));
        }

        return TypedResults.Created($"/briefs/{id}/revisions/{revision.Number}", RevisionJson.Of(revision));
    }

    private static Results<NoContent, ProblemHttpResult> Withdraw(
        string id, WithdrawalRequest? request, HttpContext context, BriefStore briefs, Signing signing)
    {
        if (briefs.Find(id) is null)
            return TypedResults.Problem(Problem.NotFound($"No brief is kept under \"{id}\"."));
        signing.Withdraw(id, SignerOf(context), request?.Reason);
        return TypedResults.NoContent();
    }

    /// <exception cref="InvalidInputException">Nobody has signed in: a trial cannot sign.</exception>
    internal static Signer SignerOf(HttpContext context) =>
        Who.Of(context) is { } who
            ? new(who.Id, who.Name, who.ByKey)
            : throw InvalidInputException.Field("signer", "Signing needs a person who has signed in, or a key with the scope to sign.");
}

/// <summary>A signed revision as programs get it; its content is the brief of <c>GET /api/v1/briefs/{id}</c> at that time.</summary>
internal sealed record RevisionJson(
    string BriefId, int Number, string Site, DateOnly Date, string SignedBy, DateTimeOffset SignedAt, string? Reason,
    string ProgramVersion, string SoundingSha256, string? PreviousSha256, string Sha256)
{
    public static RevisionJson Of(Revision revision) => new(
        revision.BriefId, revision.Number, revision.SiteId, revision.Date, revision.SignedBy, revision.SignedAt, revision.Reason,
        revision.ProgramVersion, revision.SoundingHash, revision.PreviousHash, revision.Hash);
}
