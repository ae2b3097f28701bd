using DayBrief.Days;
using DayBrief.Units;

namespace DayBrief.Service.Features.Briefs;

/// <summary>The words of a caution: the cause with its figure and time, then what follows from it.</summary>
/// <remarks>What is advised follows [FAA-13A] and [AIM], and always defers to local rules.</remarks>
internal static class HazardText
{
    public static string Title(Hazard hazard) => hazard.Kind switch
    {
        HazardKind.Thunder => "Thunderstorms",
        HazardKind.Forecast => "Aerodrome forecast",
        HazardKind.ThunderInStore => "Thunder in store",
        HazardKind.Showers => "Showers",
        HazardKind.Overdevelopment => "Tall cumulus",
        HazardKind.SpreadOut => "Spreading cumulus",
        HazardKind.SurfaceWind => "Wind at the ground",
        HazardKind.Crosswind => "Crosswind",
        HazardKind.WindAloft => "Wind in the thermals",
        HazardKind.WindGradient => "Wind gradient",
        HazardKind.LowCloud => "Low cloud base",
        HazardKind.LowTops => "Low tops",
        HazardKind.Icing => "Freezing level",
        HazardKind.Oxygen => "Oxygen",
        HazardKind.DensityAltitude => "Thin air at launch",
        HazardKind.Heat => "Heat",
        HazardKind.Cold => "Cold",
        HazardKind.SuddenEnd => "Sudden end",
        _ => "Last light",
    };

    public static string Of(Hazard hazard, Reader reader)
    {
        var from = hazard.From is { } time ? reader.Time(time) : "";
        string Height() => reader.Height(hazard.Value!.Value);
        string Wind() => reader.WindSpeed(Speed.FromMetresPerSecond(hazard.Value!.Value));
        return hazard.Kind switch
        {
            HazardKind.Thunder => $"{(hazard.About is { } seen ? $"Reported now at {seen}" : $"Possible from {from}")}. Gusts run miles ahead of a storm: land before it, never go under its anvil.",
            HazardKind.Forecast => $"{hazard.About}{(from.Length > 0 ? $" (from {from})" : "")}. Plan to be down before it.",
            HazardKind.ThunderInStore => "The ascent holds the energy for thunderstorms"
                + (hazard.Value is { } k ? $" (K index {Math.Round(k)})" : "")
                + ". A front, hills or a sea breeze may set it free: watch for towers, have a way home.",
            HazardKind.Showers => $"Likely from {from}. Sink and gusts around them, poor sight below: keep a field upwind of the rain.",
            HazardKind.Overdevelopment => $"Clouds grow tall from {from}. Lift under them can outrun you: leave early, keep the cloud distance of your rules.",
            HazardKind.SpreadOut => "Shade can end the lift over a wide area. Stay within reach of the field, wait for the next gap.",
            HazardKind.SurfaceWind => $"{Wind()} {(hazard.About is { } seen ? $"reported at {seen}" : "this morning")}, more with the thermals. Approach speed up, turns not low, gliders on the ground held.",
            HazardKind.Crosswind => $"About {Wind()} across runway {hazard.About} this morning. The site's and your own limits decide.",
            HazardKind.WindAloft => $"Mean {Wind()} in the layer. Thermals are torn and drift fast: mind the way back against it.",
            HazardKind.WindGradient => $"{Wind()} close above the ground. Expect to lose airspeed on the approach.",
            HazardKind.LowCloud => $"First base {(hazard.Value < 60 ? "close to the ground" : $"about {Height()}")}. Keep the cloud distance and the sight your rules ask for.",
            HazardKind.LowTops => $"Thermals end about {Height()}. Little time to search: stay within reach of the circuit.",
            HazardKind.Icing => $"0 °C at {Height()}, below the usable top: wet wings and ballast freeze, canopies mist.",
            HazardKind.Oxygen => $"The usable top is {Height()} above sea level: oxygen rules and thin air.",
            HazardKind.DensityAltitude => $"Density altitude about {Height()} at the day's maximum: longer ground run, slower climb on tow or winch.",
            HazardKind.Heat => $"Up to {Reader.Temperature(hazard.Value!.Value)}: drink, shade, hat; gliders in the sun heat up quickly.",
            HazardKind.Cold => $"No more than {Reader.Temperature(hazard.Value!.Value)}: cold feet and hands fly badly.",
            HazardKind.SuddenEnd => "Lift stops within minutes when the sun goes. Be high or be home before shade comes.",
            _ => $"Thermals may last until shortly before sunset at {from}: be down when your rules ask for it.",
        };
    }
}
