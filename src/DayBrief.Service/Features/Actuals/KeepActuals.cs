using DayBrief.Service.Features.Sites;
using DayBrief.Service.Infrastructure;
using Microsoft.AspNetCore.Http.HttpResults;

namespace DayBrief.Service.Features.Actuals;

/// <summary>What really happened on a day, for programs and for the page's own script.</summary>
internal static class KeepActuals
{
    public sealed record Response(string Site, string Date, IReadOnlyList<ActualJson> Entries);

    internal static void Map(RouteGroupBuilder days)
    {
        days.MapPost("", KeepAsync).WithName(nameof(KeepActuals)).Accepts<ActualJson>("application/json", "text/csv", "text/plain", "application/octet-stream")
            .WithSummary("Write down what really happened: one entry, a list, or a CSV table. An entry with the id of an earlier one replaces it.");
        days.MapGet("", All).WithName("ShowActuals").WithSummary("What was written down for a day.");
        days.MapDelete("/{id}", Remove).WithName("RemoveActual").WithSummary("Remove an entry and its photo.");
        days.MapGet("/{id}/photo", Photo).WithName("ShowActualPhoto").WithSummary("The photo of an entry.");
    }

    private static async Task<Results<Created<Response>, ProblemHttpResult>> KeepAsync(
        string site, DateOnly date, HttpRequest request, SiteStore sites, ActualStore store, CancellationToken stopping)
    {
        if (sites.Find(site)?.ToSite() is not { } field)
            return NoSite(site);
        store.Keep(site, date, await ActualsBody.ReadAsync(request, date, field.TimeZone, stopping));
        return TypedResults.Created(request.Path, Of(site, date, field.TimeZone, store));
    }

    private static Results<Ok<Response>, ProblemHttpResult> All(string site, DateOnly date, SiteStore sites, ActualStore store) =>
        sites.Find(site)?.ToSite() is { } field ? TypedResults.Ok(Of(site, date, field.TimeZone, store)) : NoSite(site);

    private static Results<NoContent, ProblemHttpResult> Remove(string site, DateOnly date, string id, ActualStore store) =>
        store.Remove(site, date, id) ? TypedResults.NoContent() : TypedResults.Problem(Problem.NotFound($"No entry is kept under \"{id}\"."));

    private static Results<FileContentHttpResult, ProblemHttpResult> Photo(string site, DateOnly date, string id, ActualStore store) =>
        store.Photo(site, date, id) is { } jpeg ? TypedResults.File(jpeg, "image/jpeg") : TypedResults.Problem(Problem.NotFound($"No photo is kept under \"{id}\"."));

    private static Response Of(string site, DateOnly date, TimeZoneInfo zone, ActualStore store) =>
        new(site, date.ToString("yyyy-MM-dd", System.Globalization.CultureInfo.InvariantCulture), [.. store.Of(site, date).Select(entry => ActualJson.Of(entry, site, zone))]);

    private static ProblemHttpResult NoSite(string site) => TypedResults.Problem(Problem.NotFound($"No site is kept under \"{site}\"."));
}
