using DayBrief.Days;
using DayBrief.Units;

namespace DayBrief.Service.Features.Briefs;

/// <summary>Words for low cloud, low tops, gliders together, hills, ceiling, freezing and oxygen.</summary>
internal static class HeightText
{
    public static string Of(Hazard hazard, Reader reader)
    {
        string Height() => reader.Height(hazard.Value!.Value);
        return hazard.Kind switch
        {
            HazardKind.LowCloud => LowCloud(hazard, reader),
            HazardKind.PoorVisibility => reader.Say($"{hazard.Value / 1000:0.#} km {HazardText.Known(hazard, reader)}. Look out longer, stay near; your rules say what you need to see."),
            HazardKind.LowTops => reader.Say($"Thermals end about {Height()}. Little time to search: stay within reach of the circuit."),
            HazardKind.LowThermalling => reader.Say($"Thermals end below {Height()} for a long time. Break off for the circuit at the height your site sets; no turns in lift below it."),
            HazardKind.CirclingTogether => Together(hazard, reader),
            HazardKind.Terrain => Terrain(hazard, reader),
            HazardKind.Ceiling => reader.Say($"Thermals reach above the airspace ceiling of {Height()} above sea level{(hazard.About is { } note ? $" ({note})" : "")}. Brakes before it, not at it; check today's airspace."),
            HazardKind.CloudClearance => reader["Thermals carry up to the base, and lift often grows just beneath it. Leave in time: the rules ask for a distance from cloud, in much airspace 1,000 ft (300 m) below it."],
            HazardKind.Icing => reader.Say($"0 °C at {Height()}, below the usable top: wet wings and ballast freeze, canopies mist."),
            _ => reader.Say($"The usable top is {Height()} above sea level. Aviation medicine advises oxygen by day from 10,000 ft (3050 m); your rules say from where it must be used."),
        };
    }

    private static string LowCloud(Hazard hazard, Reader reader)
    {
        var near = hazard.Value < 60 ? reader["close to the ground"] : reader.Say($"about {reader.Height(hazard.Value!.Value)}");
        return hazard.Source is null
            ? reader.Say($"First base {near}. Keep the cloud distance and the sight your rules ask for.")
            : reader.Say($"Broken or more {near}, {HazardText.Known(hazard, reader)}. Keep the cloud distance and the sight your rules ask for.");
    }

    private static string Together(Hazard hazard, Reader reader)
    {
        var cause = hazard.About switch
        {
            "top" => reader.Say($"Tops no higher than {reader.Height(hazard.Value!.Value)} keep everybody in the same height."),
            "narrow" => reader.Say($"Thermals are narrow (radius {reader.Height(hazard.Value!.Value)})."),
            _ => reader.Say($"Thermals stand far apart ({hazard.Value / 1000:0.#} km), and gliders gather in them."),
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
