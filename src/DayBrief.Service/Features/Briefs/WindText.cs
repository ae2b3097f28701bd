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
            OverLine,
            (hazard, reader) => reader.Say($"Mean {Wind(hazard, reader)} {Known(hazard, reader)}, {LimitText.Above(hazard, reader)}; {Before(hazard, reader)}, gliders on the ground held or tied.")),
        [HazardKind.GustOverLimit] = CautionWords.Of(
            Language.Text("Gusts above the limit"),
            OverLine,
            (hazard, reader) => reader.Say($"Gusts of {Wind(hazard, reader)} {Known(hazard, reader)}, {LimitText.Above(hazard, reader)}; {Before(hazard, reader)}, gliders on the ground held or tied.")),
        [HazardKind.Gusts] = CautionWords.Of(
            Language.Text("Gusts"),
            (hazard, reader) => reader.Say($"{Wind(hazard, reader)}: approach speed up"),
            (hazard, reader) => reader.Say($"Up to {Wind(hazard, reader)} {Known(hazard, reader)}, {reader.WindSpeed(Speed.FromKnots(10))} or more above the mean. Approach speed up by your rules, hold-off not too high.")),
        [HazardKind.SurfaceWind] = CautionWords.Of(
            Language.Text("Wind at the ground"),
            (hazard, reader) => reader.Say($"{Wind(hazard, reader)}: turns not low, gliders held"),
            (hazard, reader) => reader.Say($"{Wind(hazard, reader)} {Known(hazard, reader)}, more with the thermals. Approach speed up, turns not low, gliders on the ground held.")),
        [HazardKind.Crosswind] = CautionWords.Of(Language.Text("Crosswind"), CrosswindLine, Crosswind),
        [HazardKind.WindAloft] = CautionWords.Of(Language.Text("Wind in the thermals"), AloftLine, Aloft),
        [HazardKind.WindGradient] = CautionWords.Of(
            Language.Text("Wind gradient"),
            (hazard, reader) => reader.Say($"{Wind(hazard, reader)} less at the ground: approach speed up"),
            (hazard, reader) => reader.Say($"This morning's wind changes by {Wind(hazard, reader)} from {reader.Height(100)} to the ground, until thermals stir the air. Expect to lose that much airspeed on the approach: more speed by your rules, no steep turns low.")),
    };

    private static string OverLine(Hazard hazard, Reader reader) =>
        reader.Say($"to {Wind(hazard, reader)}, {LimitText.Short(hazard, reader, limit => LimitText.Figure(limit, reader))}: {Before(hazard, reader)}");

    private static string AloftLine(Hazard hazard, Reader reader) => hazard.Beside is { } lean
        ? reader.Say($"{Wind(hazard, reader)}, leaning {lean:0}°: hardly usable")
        : reader.Say($"{Wind(hazard, reader)} tears them: mind the way back");

    private static string Aloft(Hazard hazard, Reader reader) => hazard.Beside is { } lean
        ? reader.Say($"Mean {Wind(hazard, reader)} in the layer, and the shear tilts the thermals by {lean:0}°. They are torn and drift fast: mind the way back against the wind.")
        : reader.Say($"Mean {Wind(hazard, reader)} in the layer. Thermals are torn and drift fast: mind the way back against it.");

    private static string CrosswindLine(Hazard hazard, Reader reader)
    {
        var wind = reader.Say($"{Wind(hazard, reader)} on {hazard.About ?? ""}");
        return (hazard.EndsFlying, hazard.Passed) switch
        {
            (true, [{ IsSet: false }, ..]) => reader.Say($"{wind}, limit not set: {Before(hazard, reader)}"),
            (true, [var lowest, ..]) => reader.Say($"{wind}, limit {LimitText.Figure(lowest.Limit, reader)} {For(lowest.Group, reader)}: {Before(hazard, reader)}"),
            (_, [var lowest, ..]) => reader.Say($"{wind}, limit {LimitText.Figure(lowest.Limit, reader)} {For(lowest.Group, reader)}: the other runway"),
            _ => reader.Say($"{wind}: your own limits decide"),
        };
    }

    private static string Crosswind(Hazard hazard, Reader reader)
    {
        var known = Known(hazard with { About = null }, reader);
        var text = hazard.Passed switch
        {
            [] => reader.Say($"About {Wind(hazard, reader)} across runway {hazard.About ?? ""}, {known}. The site sets no limit: your own decide."),
            [{ IsSet: false }, ..] => reader.Say($"About {Wind(hazard, reader)} across runway {hazard.About ?? ""}, {known}; {LimitText.NotSet(hazard, reader, LimitText.Figure(hazard.Passed[0].Limit, reader))}."),
            _ => reader.Say($"About {Wind(hazard, reader)} across runway {hazard.About ?? ""}, {known}: above the site's limit {Limits(hazard, reader)}."),
        };
        return hazard.EndsFlying == true ? $"{text} {reader.Say($"For whom it is passed: {Before(hazard, reader)}.")}" : text;
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
