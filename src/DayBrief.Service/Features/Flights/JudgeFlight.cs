using DayBrief.Service.Features.Soundings;
using Microsoft.AspNetCore.Http.HttpResults;

namespace DayBrief.Service.Features.Flights;

/// <summary>Reads a flight recorder file and answers with what was flown; nothing is kept.</summary>
internal static class JudgeFlight
{
    internal static void Map(RouteGroupBuilder api) =>
        api.MapPost("/flights", Handle)
            .Accepts<string>("application/octet-stream", "text/plain", "multipart/form-data")
            .WithName(nameof(JudgeFlight))
            .WithSummary("Measure the circling of a flight from its recorder file (FAI IGC standard); nothing is kept.")
            .DisableAntiforgery();

    private static async Task<Ok<FlightJson>> Handle(HttpRequest request, CancellationToken stopping)
    {
        var body = await SoundingBody.ReadAsync(request, stopping);
        return TypedResults.Ok(FlightReading.Of(body.Content, body.Name, "body"));
    }
}
