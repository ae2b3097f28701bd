using DayBrief.Days;
using DayBrief.Service.Languages;

namespace DayBrief.Service.Features.Briefs;

/// <summary>Words for thunder, showers and tall cloud.</summary>
internal static class StormText
{
    public static IReadOnlyDictionary<HazardKind, CautionWords> Words { get; } = new Dictionary<HazardKind, CautionWords>
    {
        [HazardKind.Thunder] = Ending(Language.Text("Thunderstorms"), reader => reader["Gusts run miles ahead of a storm: never go under its anvil."]),
        [HazardKind.Cumulonimbus] = Ending(Language.Text("Cumulonimbus"), reader => reader["Strong sink and gusts spread from it before any thunder."]),
        [HazardKind.Squall] = Ending(Language.Text("Squalls"), reader => reader["The wind rises within a minute: gliders tied down or under cover first."]),
        [HazardKind.FunnelCloud] = Ending(Language.Text("Funnel cloud"), reader => reader["Nothing withstands it: people under cover, gliders come second."]),
        [HazardKind.Hail] = Ending(Language.Text("Hail"), reader => reader["It breaks canopies and surfaces: gliders under cover."]),
        [HazardKind.FreezingPrecipitation] = Ending(Language.Text("Freezing rain or drizzle"), reader => reader["Ice covers wings and canopy within minutes."]),
        [HazardKind.ThunderInStore] = CautionWords.Of(
            Language.Text("Thunder in store"), (_, reader) => reader["watch for towers, keep a way home"], InStore),
        [HazardKind.Showers] = CautionWords.Of(Language.Text("Showers"), (_, reader) => reader["sink and gusts: a field in reach"], Showers),
        [HazardKind.Overdevelopment] = CautionWords.Of(Language.Text("Tall cumulus"), (_, reader) => reader["its lift outruns you: leave early"], Tall),
        [HazardKind.SpreadOut] = CautionWords.Of(
            Language.Text("Spreading cumulus"),
            (_, reader) => reader["shade ends the lift: stay in reach"],
            (_, reader) => reader["Shade can end the lift over a wide area. Stay within reach of the field, wait for the next gap."]),
        [HazardKind.Downdraught] = CautionWords.Of(Language.Text("Falling air"), (_, reader) => reader["height in hand for the way home"], Falling),
    };

    private static CautionWords Ending(string title, Func<Reader, string> why) => CautionWords.Of(
        title, HazardText.Before, (hazard, reader) => reader.Say($"{HazardText.KnownAs(hazard, reader)}; {HazardText.Before(hazard, reader)}. {why(reader)}"));

    private static string InStore(Hazard hazard, Reader reader) => hazard.Beside is { } k
        ? reader.Say($"The air holds the energy for thunderstorms (CAPE {hazard.Value:0} J/kg, K index {k:0}). A front, hills or a sea breeze may set it free: watch for towers, have a way home.")
        : reader.Say($"The air holds the energy for thunderstorms (CAPE {hazard.Value:0} J/kg). A front, hills or a sea breeze may set it free: watch for towers, have a way home.");

    private static string Showers(Hazard hazard, Reader reader) => hazard.Source is null
        ? reader["Likely. Sink and gusts around them, poor sight below: keep a field upwind of the rain."]
        : reader.Say($"Showers {HazardText.Known(hazard, reader)}. Sink and gusts around them, poor sight below: keep a field upwind of the rain.");

    private static string Tall(Hazard hazard, Reader reader) => hazard.Source is null
        ? reader["Clouds grow tall. Lift under them can outrun you: leave early, keep the cloud distance of your rules."]
        : reader.Say($"Tall cloud {HazardText.Known(hazard, reader)}. Lift under it can outrun you: leave early, keep the cloud distance of your rules.");

    private static string Falling(Hazard hazard, Reader reader) => (hazard.About, hazard.Value) switch
    {
        ("spread", _) => reader["Where cloud that has spread dissolves, air sinks over a wide area: height in hand for the way home."],
        (_, { } basis) => reader.Say($"Beside and below such clouds (base {reader.Height(basis)}) and where they dissolve, air falls fast and spreads in gusts: keep a field in reach, expect the wind to turn."),
        _ => reader["Beside and below such clouds and where they dissolve, air falls fast and spreads in gusts: keep a field in reach, expect the wind to turn."],
    };
}
