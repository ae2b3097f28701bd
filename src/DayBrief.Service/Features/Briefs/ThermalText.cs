using DayBrief.Days;
using DayBrief.Service.Languages;
using DayBrief.Units;
using static DayBrief.Service.Features.Briefs.HazardText;

namespace DayBrief.Service.Features.Briefs;

/// <summary>Words for the thermals themselves: low, crowded, over hills, gone at once.</summary>
internal static class ThermalText
{
    public static IReadOnlyDictionary<HazardKind, CautionWords> Words { get; } = new Dictionary<HazardKind, CautionWords>
    {
        [HazardKind.LowTops] = CautionWords.Of(
            Language.Text("Low tops"),
            (hazard, reader) => reader.Say($"they end about {Height(hazard, reader)}: stay within reach"),
            (hazard, reader) => reader.Say($"Thermals end about {Height(hazard, reader)}. Little time to search: stay within reach of the circuit.")),
        [HazardKind.LowThermalling] = new(
            Language.Text("Circling low"), (_, reader) => reader["none below your group's least height"], CirclingLow),
        [HazardKind.CirclingTogether] = CautionWords.Of(
            Language.Text("Gliders close together"), (_, reader) => reader["join as they circle, lose sight and leave"], Together),
        [HazardKind.Terrain] = CautionWords.Of(
            Language.Text("Hills and mountains"), (_, reader) => reader["sink and turbulence in the lee: a way out"], Terrain),
        [HazardKind.SuddenEnd] = CautionWords.Of(
            Language.Text("Sudden end"),
            (_, reader) => reader["lift gone within minutes of shade"],
            (_, reader) => reader["Lift stops within minutes when the sun goes. Be high or be home before shade comes."]),
    };

    private static string CirclingLow(Hazard hazard, Site site, Reader reader)
    {
        var cause = hazard.About switch
        {
            "top" => reader.Say($"Thermals end about {Height(hazard, reader)}: all circling is low."),
            "weak" => reader.Say($"No climb better than {reader.Climb(hazard.Value!.Value)}: it tempts to hang on low."),
            _ => reader.Say($"Thermals end below {Height(hazard, reader)} for a long time."),
        };
        var rules = Enum.GetValues<Experience>().Select(group => site.Limits.Circling.For(group)).ToArray();
        string Least(Experience group) => reader.Height(site.Limits.Circling.For(group).LeastHeight.Metres);
        var least = reader.Say($"Nobody circles below {Least(Experience.BeforeSolo)} before solo, {Least(Experience.LocalSolo)} for local solo, {Least(Experience.CrossCountry)} for cross-country");
        var set = rules.All(rule => rule.LeastHeightSet) ? "" : $" {reader["(where the site sets none, common practice)"]}";
        return $"{cause} {least}{set}. {reader["Break off for the circuit in time."]}";
    }

    private static string Together(Hazard hazard, Reader reader)
    {
        var cause = hazard.About switch
        {
            "top" => reader.Say($"Tops no higher than {Height(hazard, reader)} keep everybody in the same height."),
            "narrow" => reader["Thermals are narrow."],
            _ => reader.Say($"Thermals stand far apart ({reader.Distance(hazard.Value!.Value)}), and gliders gather in them."),
        };
        return $"{cause} {reader["Join as the first one circles, keep everyone in sight, leave when you lose one."]}";
    }

    private static string Terrain(Hazard hazard, Reader reader)
    {
        var wind = hazard.Value is { } ms ? reader.WindSpeed(Speed.FromMetresPerSecond(ms)) : reader["not known"];
        return hazard.About == "Mountains"
            ? reader.Say($"Wind in the layer {wind}. Sink and turbulence in the lee, valley winds that turn; a way out downhill. The local mountain instructor's word goes first.")
            : reader.Say($"Wind in the layer {wind}. Sink and turbulence in the lee of ridges; no turn towards the slope. The local instructor's word goes first.");
    }
}
