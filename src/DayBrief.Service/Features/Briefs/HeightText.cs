using DayBrief.Days;
using DayBrief.Service.Languages;
using static DayBrief.Service.Features.Briefs.HazardText;

namespace DayBrief.Service.Features.Briefs;

/// <summary>Words for low cloud, sight, ceiling, cloud, freezing and oxygen.</summary>
internal static class HeightText
{
    public static IReadOnlyDictionary<HazardKind, CautionWords> Words { get; } = new Dictionary<HazardKind, CautionWords>
    {
        [HazardKind.LowCloud] = CautionWords.Of(
            Language.Text("Low cloud base"), (hazard, reader) => reader.Say($"{Near(hazard, reader)}: keep your distance and sight"), LowCloud),
        [HazardKind.VisibilityBelowLeast] = CautionWords.Of(
            Language.Text("Visibility too low"),
            (hazard, reader) => reader.Say($"{Sight(hazard.Value!.Value, reader)}, {LimitText.Short(hazard, reader, limit => Sight(limit, reader))}: {Before(hazard, reader)}"),
            (hazard, reader) => reader.Say($"Visibility {Sight(hazard.Value!.Value, reader)}, {KnownAs(hazard, reader)}, {LimitText.Below(hazard, reader, limit => Sight(limit, reader))}; {Before(hazard, reader)}.")),
        [HazardKind.CeilingBelowLeast] = CautionWords.Of(
            Language.Text("Cloud too low"),
            (hazard, reader) => reader.Say($"{Near(hazard, reader)}, {LimitText.Short(hazard, reader, reader.Height)}: {Before(hazard, reader)}"),
            (hazard, reader) => reader.Say($"Broken or more {Near(hazard, reader)}, {KnownAs(hazard, reader)}, {LimitText.Below(hazard, reader, reader.Height)}; {Before(hazard, reader)}.")),
        [HazardKind.PoorVisibility] = CautionWords.Of(
            Language.Text("Poor visibility"),
            (hazard, reader) => reader.Say($"{hazard.Value / 1000:0.#} km: look out longer, stay near"),
            (hazard, reader) => reader.Say($"{hazard.Value / 1000:0.#} km {Known(hazard, reader)}. Look out longer, stay near; your rules say what you need to see.")),
        [HazardKind.Ceiling] = CautionWords.Of(
            Language.Text("Ceiling"),
            (hazard, reader) => reader.Say($"airspace from {reader.Ceiling(hazard.Value!.Value)} above sea level"),
            (hazard, reader) => reader.Say($"Thermals reach above the airspace ceiling of {reader.Ceiling(hazard.Value!.Value)} above sea level{(hazard.About is { } note ? $" ({note})" : "")}. Brakes before it, not at it; check today's airspace.")),
        [HazardKind.CloudClearance] = CautionWords.Of(
            Language.Text("Distance from cloud"),
            (_, reader) => reader["lift grows under the base: leave in time"],
            (_, reader) => reader["Thermals carry up to the base, and lift often grows just beneath it. Leave in time: the rules ask for a distance from cloud, in much airspace 1,000 ft (300 m) below it."]),
        [HazardKind.Icing] = CautionWords.Of(
            Language.Text("Freezing level"),
            (hazard, reader) => reader.Say($"0 °C at {Height(hazard, reader)}: wings, ballast, canopy"),
            (hazard, reader) => reader.Say($"0 °C at {Height(hazard, reader)}, below the usable top: wet wings and ballast freeze, canopies mist.")),
        [HazardKind.Oxygen] = CautionWords.Of(
            Language.Text("Oxygen"),
            (hazard, reader) => reader.Say($"top {Height(hazard, reader)} above sea level: by your rules"),
            (hazard, reader) => reader.Say($"The usable top is {Height(hazard, reader)} above sea level. Aviation medicine advises oxygen by day from 10,000 ft (3050 m); your rules say from where it must be used.")),
    };

    private static string Near(Hazard hazard, Reader reader) =>
        hazard.Value < 60 ? reader["close to the ground"] : reader.Say($"about {Height(hazard, reader)}");

    private static string LowCloud(Hazard hazard, Reader reader) => hazard.Source is null
        ? reader.Say($"First base {Near(hazard, reader)}. Keep the cloud distance and the sight your rules ask for.")
        : reader.Say($"Broken or more {Near(hazard, reader)}, {Known(hazard, reader)}. Keep the cloud distance and the sight your rules ask for.");
}
