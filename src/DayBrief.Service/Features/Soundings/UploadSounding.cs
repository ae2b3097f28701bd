using DayBrief.Service.Features.People;
using Microsoft.AspNetCore.Http.HttpResults;

namespace DayBrief.Service.Features.Soundings;

/// <summary>Keeps an ascent and answers with its analysis.</summary>
internal static class UploadSounding
{
    public sealed record Response(string Id, AnalysisJson Analysis);

    internal static void Map(RouteGroupBuilder api) =>
        api.MapPost("/soundings", Handle)
            .Accepts<string>("text/plain", "text/csv", "application/json", "application/octet-stream", "multipart/form-data")
            .WithName(nameof(UploadSounding))
            .WithSummary("Keep an ascent of any supported format.")
            .RequireAuthorization(Access.Instructor)
            .DisableAntiforgery();

    private static async Task<Created<Response>> Handle(HttpRequest request, SoundingStore soundings, CancellationToken stopping)
    {
        var options = AnalysisOptions.Of(request.Query);
        var body = await SoundingBody.ReadAsync(request, stopping);
        var stored = soundings.Save(body.Content, body.Name);
        return TypedResults.Created(
            $"/api/v1/soundings/{stored.Id}", new Response(stored.Id, AnalysisJson.Of(options.Analyse(stored.Sounding))));
    }
}
