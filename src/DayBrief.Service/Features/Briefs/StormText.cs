using DayBrief.Days;

namespace DayBrief.Service.Features.Briefs;

/// <summary>Words for thunder, showers and tall cloud.</summary>
internal static class StormText
{
    public static string Of(Hazard hazard, Reader reader) => hazard.Kind switch
    {
        HazardKind.Thunder => hazard.About is { } seen
            ? reader.Say($"Reported now at {seen}. Gusts run miles ahead of a storm: land before it, never go under its anvil.")
            : reader["Possible. Gusts run miles ahead of a storm: land before it, never go under its anvil."],
        HazardKind.Forecast => reader.Say($"{hazard.About ?? ""}. Plan to be down before it."),
        HazardKind.ThunderInStore => hazard.Value is { } k
            ? reader.Say($"The ascent holds the energy for thunderstorms (K index {k:0}). A front, hills or a sea breeze may set it free: watch for towers, have a way home.")
            : reader["The ascent holds the energy for thunderstorms. A front, hills or a sea breeze may set it free: watch for towers, have a way home."],
        HazardKind.Showers => hazard.Source is null
            ? reader["Likely. Sink and gusts around them, poor sight below: keep a field upwind of the rain."]
            : reader.Say($"Showers {HazardText.Known(hazard, reader)}. Sink and gusts around them, poor sight below: keep a field upwind of the rain."),
        HazardKind.Overdevelopment => hazard.Source is null
            ? reader["Clouds grow tall. Lift under them can outrun you: leave early, keep the cloud distance of your rules."]
            : reader.Say($"Tall cloud {HazardText.Known(hazard, reader)}. Lift under it can outrun you: leave early, keep the cloud distance of your rules."),
        HazardKind.SpreadOut => reader["Shade can end the lift over a wide area. Stay within reach of the field, wait for the next gap."],
        _ when hazard.About == "spread" => reader["Where cloud that has spread dissolves, air sinks over a wide area: height in hand for the way home."],
        _ => hazard.Value is { } basis
            ? reader.Say($"Beside and below such clouds (base {reader.Height(basis)}) and where they dissolve, air falls fast and spreads in gusts: keep a field in reach, expect the wind to turn.")
            : reader["Beside and below such clouds and where they dissolve, air falls fast and spreads in gusts: keep a field in reach, expect the wind to turn."],
    };
}
