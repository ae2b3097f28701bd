namespace DayBrief.Service.Features.Flights;

/// <summary>What was flown.</summary>
internal static class FlightsFeature
{
    public static void MapFlights(this RouteGroupBuilder api) => JudgeFlight.Map(api.MapGroup("").WithTags("Flights"));
}
