using DayBrief.Days;
using DayBrief.Service.Languages;
using DayBrief.Units;
using static DayBrief.Service.Features.Briefs.HazardText;

namespace DayBrief.Service.Features.Briefs;

/// <summary>Words for wind and gusts.</summary>
internal static class WindText
{
    public static IReadOnlyDictionary<HazardKind, CautionWords> Words { get; } = new Dictionary<HazardKind, CautionWords>
    {
        [HazardKind.WindOverLimit] = CautionWords.Of(
            Language.Text("Wind above the limit"),
            (hazard, reader) => reader.Say($"{Wind(hazard, reader)}, limit {Limit(hazard, reader)}: no launching"),
            (hazard, reader) => reader.Say($"{Wind(hazard, reader)} {Known(hazard, reader)}; the site's limit is {Limit(hazard, reader)}. No launching above it; gliders on the ground held or tied.")),
        [HazardKind.GustOverLimit] = CautionWords.Of(
            Language.Text("Gusts above the limit"),
            (hazard, reader) => reader.Say($"{Wind(hazard, reader)}, limit {Limit(hazard, reader)}: no launching"),
            (hazard, reader) => reader.Say($"Gusts {Wind(hazard, reader)} {Known(hazard, reader)}; the site's limit is {Limit(hazard, reader)}. No launching above it; gliders on the ground held or tied.")),
        [HazardKind.Gusts] = CautionWords.Of(
            Language.Text("Gusts"),
            (hazard, reader) => reader.Say($"{Wind(hazard, reader)}: approach speed up"),
            (hazard, reader) => reader.Say($"Up to {Wind(hazard, reader)} {Known(hazard, reader)}, {reader.WindSpeed(Speed.FromKnots(10))} or more above the mean. Approach speed up by your rules, hold-off not too high.")),
        [HazardKind.SurfaceWind] = CautionWords.Of(
            Language.Text("Wind at the ground"),
            (hazard, reader) => reader.Say($"{Wind(hazard, reader)}: turns not low, gliders held"),
            (hazard, reader) => reader.Say($"{Wind(hazard, reader)} {Known(hazard, reader)}, more with the thermals. Approach speed up, turns not low, gliders on the ground held.")),
        [HazardKind.Crosswind] = CautionWords.Of(Language.Text("Crosswind"), CrosswindLine, Crosswind),
        [HazardKind.WindAloft] = CautionWords.Of(
            Language.Text("Wind in the thermals"),
            (hazard, reader) => reader.Say($"{Wind(hazard, reader)} tears them: mind the way back"),
            (hazard, reader) => reader.Say($"Mean {Wind(hazard, reader)} in the layer. Thermals are torn and drift fast: mind the way back against it.")),
        [HazardKind.WindGradient] = CautionWords.Of(
            Language.Text("Wind gradient"),
            (_, reader) => reader["approach speed up, no steep turns low"],
            (hazard, reader) => reader.Say($"{Wind(hazard, reader)} close above the ground. Expect to lose airspeed on the approach.")),
    };

    private static string Limit(Hazard hazard, Reader reader) =>
        hazard.Passed is [var first, ..] ? reader.WindLimit(Speed.FromMetresPerSecond(first.Limit)) : reader["not set [limit]"];

    private static string CrosswindLine(Hazard hazard, Reader reader) => hazard.Passed is [var lowest, ..]
        ? reader.Say($"{Wind(hazard, reader)} on {hazard.About ?? ""}, limit {reader.WindLimit(Speed.FromMetresPerSecond(lowest.Limit))} {For(lowest.Group, reader)}")
        : reader.Say($"{Wind(hazard, reader)} on {hazard.About ?? ""}: your own limits decide");

    private static string Crosswind(Hazard hazard, Reader reader)
    {
        var known = Known(hazard with { About = null }, reader);
        return hazard.Passed.IsEmpty
            ? reader.Say($"About {Wind(hazard, reader)} across runway {hazard.About ?? ""}, {known}. The site's and your own limits decide.")
            : reader.Say($"About {Wind(hazard, reader)} across runway {hazard.About ?? ""}, {known}: above the site's limit {Limits(hazard, reader)}.");
    }

    private static string Limits(Hazard hazard, Reader reader) =>
        string.Join(", ", hazard.Passed.Select(passed => $"{For(passed.Group, reader)} ({reader.WindLimit(Speed.FromMetresPerSecond(passed.Limit))})"));

    private static string For(CrosswindGroup? group, Reader reader) => group switch
    {
        CrosswindGroup.BeforeSolo => reader["before solo"],
        CrosswindGroup.LocalSolo => reader["for local solo"],
        CrosswindGroup.CrossCountry => reader["for cross-country"],
        _ => reader["for everybody"],
    };
}
