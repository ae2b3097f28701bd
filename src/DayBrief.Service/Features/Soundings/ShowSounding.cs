using Microsoft.AspNetCore.Http.HttpResults;

namespace DayBrief.Service.Features.Soundings;

/// <summary>Gives a kept ascent back with its analysis.</summary>
internal static class ShowSounding
{
    internal static void Map(RouteGroupBuilder api) =>
        api.MapGet("/soundings/{id}", Handle).WithName(nameof(ShowSounding)).WithSummary("A kept ascent and its analysis.");

    private static Results<Ok<UploadSounding.Response>, ProblemHttpResult> Handle(string id, HttpRequest request, SoundingStore soundings) =>
        soundings.Find(id) is { } stored
            ? TypedResults.Ok(new UploadSounding.Response(
                id, AnalysisJson.Of(AnalysisOptions.Of(request.Query).Analyse(stored.Sounding))))
            : TypedResults.Problem(Infrastructure.Problem.NotFound($"No sounding is kept under \"{id}\"."));
}
