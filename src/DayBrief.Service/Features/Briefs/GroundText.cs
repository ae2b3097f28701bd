using DayBrief.Days;
using DayBrief.Service.Languages;
using static DayBrief.Service.Features.Briefs.HazardText;

namespace DayBrief.Service.Features.Briefs;

/// <summary>Words for the launch point: thin air by launch method, heat, cold, sun, the end of the day.</summary>
internal static class GroundText
{
    public static IReadOnlyDictionary<HazardKind, CautionWords> Words { get; } = new Dictionary<HazardKind, CautionWords>
    {
        [HazardKind.DensityAltitude] = new(
            Language.Text("Thin air at launch"),
            (hazard, reader) => reader.Say($"as at {Height(hazard, reader)}: longer run, flatter climb"),
            ThinAir),
        [HazardKind.Heat] = CautionWords.Of(
            Language.Text("Heat"),
            (hazard, reader) => reader.Say($"{Reader.Temperature(hazard.Value!.Value)}: drink, shade, hat"),
            (hazard, reader) => reader.Say($"Up to {Reader.Temperature(hazard.Value!.Value)}: drink, shade, hat; gliders in the sun heat up quickly.")),
        [HazardKind.Cold] = CautionWords.Of(
            Language.Text("Cold"),
            (hazard, reader) => reader.Say($"{Reader.Temperature(hazard.Value!.Value)}: warm feet and hands"),
            (hazard, reader) => reader.Say($"No more than {Reader.Temperature(hazard.Value!.Value)}: cold feet and hands fly badly.")),
        [HazardKind.Ultraviolet] = CautionWords.Of(
            Language.Text("Sunburn"),
            (hazard, reader) => reader.Say($"UV index {hazard.Value!.Value:0}: hat, glasses, cream"),
            (hazard, reader) => reader.Say($"UV index up to {hazard.Value!.Value:0} under a clear sky: hat, sun glasses, cream; the launch point has no shade, and there is more of it aloft.")),
        [HazardKind.LastLight] = CautionWords.Of(
            Language.Text("Last light"),
            (_, reader) => reader["lift may outlast the light: be down by your rules"],
            (hazard, reader) => hazard.To is { } sunset
                ? reader.Say($"The last thermals come less than an hour before sunset at {reader.Time(sunset)}: be down when your rules ask for it.")
                : reader["The last thermals come in the hour before sunset: be down when your rules ask for it."]),
    };

    private static string ThinAir(Hazard hazard, Site site, Reader reader)
    {
        var height = Height(hazard, reader);
        var methods = site.LaunchMethods.Select(method => Method(method, reader)).ToArray();
        return methods.Length == 0
            ? reader.Say($"Density altitude about {height} at the day's maximum: longer ground run, slower climb on tow or winch.")
            : reader.Say($"Density altitude about {height} at the day's maximum: {string.Join("; ", methods)}.");
    }

    private static string Method(LaunchMethod method, Reader reader) => method switch
    {
        LaunchMethod.Winch => reader["winch: longer run, less height"],
        LaunchMethod.Aerotow => reader["aerotow: longer run, flatter climb, obstacles nearer"],
        LaunchMethod.CarTow => reader["car tow: more road for the same airspeed"],
        LaunchMethod.SelfLaunch => reader["self-launch: less power, longer run, flatter climb"],
        _ => reader["bungee: more speed over the ground to fly"],
    };
}
