using DayBrief.Soundings;
using Microsoft.AspNetCore.Http.HttpResults;

namespace DayBrief.Service.Features.Soundings;

/// <summary>Analyses an ascent and keeps nothing.</summary>
internal static class AnalyseSounding
{
    internal static void Map(RouteGroupBuilder api) =>
        api.MapPost("/analyses", Handle)
            .Accepts<string>("text/plain", "text/csv", "application/json", "application/octet-stream", "multipart/form-data")
            .WithName(nameof(AnalyseSounding))
            .WithSummary("Analyse an ascent; nothing is kept.")
            .DisableAntiforgery();

    private static async Task<Ok<AnalysisJson>> Handle(HttpRequest request, CancellationToken stopping)
    {
        var options = AnalysisOptions.Of(request.Query);
        var body = await SoundingBody.ReadAsync(request, stopping);
        return TypedResults.Ok(AnalysisJson.Of(options.Analyse(SoundingReader.Read(body.Content, body.Name))));
    }
}
