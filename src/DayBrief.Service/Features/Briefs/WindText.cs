using DayBrief.Days;
using DayBrief.Units;

namespace DayBrief.Service.Features.Briefs;

/// <summary>Words for wind and gusts.</summary>
internal static class WindText
{
    public static string Of(Hazard hazard, Reader reader)
    {
        var wind = reader.WindSpeed(Speed.FromMetresPerSecond(hazard.Value!.Value));
        string Limit() => reader.WindSpeed(Speed.FromMetresPerSecond(hazard.Passed[0].Limit));
        string Known() => HazardText.Known(hazard, reader);
        return hazard.Kind switch
        {
            HazardKind.WindOverLimit => reader.Say($"{wind} {Known()}; the site's limit is {Limit()}. No launching above it; gliders on the ground held or tied."),
            HazardKind.GustOverLimit => reader.Say($"Gusts {wind} {Known()}; the site's limit is {Limit()}. No launching above it; gliders on the ground held or tied."),
            HazardKind.Gusts => reader.Say($"Up to {wind} {Known()}, 10 kt or more above the mean. Approach speed up by your rules, hold-off not too high."),
            HazardKind.SurfaceWind => reader.Say($"{wind} {Known()}, more with the thermals. Approach speed up, turns not low, gliders on the ground held."),
            HazardKind.Crosswind => Crosswind(hazard, wind, reader),
            HazardKind.WindAloft => reader.Say($"Mean {wind} in the layer. Thermals are torn and drift fast: mind the way back against it."),
            _ => reader.Say($"{wind} close above the ground. Expect to lose airspeed on the approach."),
        };
    }

    private static string Crosswind(Hazard hazard, string wind, Reader reader)
    {
        var known = HazardText.Known(hazard with { About = null }, reader);
        return hazard.Passed.IsEmpty
            ? reader.Say($"About {wind} across runway {hazard.About ?? ""}, {known}. The site's and your own limits decide.")
            : reader.Say($"About {wind} across runway {hazard.About ?? ""}, {known}: above the site's limit {Limits(hazard, reader)}.");
    }

    private static string Limits(Hazard hazard, Reader reader) =>
        string.Join(", ", hazard.Passed.Select(passed => $"{For(passed.Group, reader)} ({reader.WindSpeed(Speed.FromMetresPerSecond(passed.Limit))})"));

    private static string For(CrosswindGroup? group, Reader reader) => group switch
    {
        CrosswindGroup.BeforeSolo => reader["before solo"],
        CrosswindGroup.LocalSolo => reader["for local solo"],
        _ => reader["for cross-country"],
    };
}
