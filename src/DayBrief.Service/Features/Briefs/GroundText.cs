using DayBrief.Days;

namespace DayBrief.Service.Features.Briefs;

/// <summary>Words for the launch point: thin air by launch method, heat, cold, sun, the end of the day.</summary>
internal static class GroundText
{
    public static string Of(Hazard hazard, Site site, Reader reader) => hazard.Kind switch
    {
        HazardKind.DensityAltitude => ThinAir(hazard, site, reader),
        HazardKind.Heat => reader.Say($"Up to {Reader.Temperature(hazard.Value!.Value)}: drink, shade, hat; gliders in the sun heat up quickly."),
        HazardKind.Cold => reader.Say($"No more than {Reader.Temperature(hazard.Value!.Value)}: cold feet and hands fly badly."),
        HazardKind.Ultraviolet => reader.Say($"UV index up to {hazard.Value!.Value:0} under a clear sky: hat, sun glasses, cream; the launch point has no shade, and there is more of it aloft."),
        HazardKind.SuddenEnd => reader["Lift stops within minutes when the sun goes. Be high or be home before shade comes."],
        _ => reader.Say($"Thermals may last until shortly before sunset at {reader.Time(hazard.From!.Value)}: be down when your rules ask for it."),
    };

    private static string ThinAir(Hazard hazard, Site site, Reader reader)
    {
        var height = reader.Height(hazard.Value!.Value);
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
