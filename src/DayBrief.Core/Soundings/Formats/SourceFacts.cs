using DayBrief.Units;

namespace DayBrief.Soundings.Formats;

/// <summary>Checks the facts about a launch that several formats state in their own way.</summary>
internal static class SourceFacts
{
    /// <summary>Null unless both are given.</summary>
    public static Position? Position(double? latitude, double? longitude, Origin origin) => (latitude, longitude) switch
    {
        ( >= -90 and <= 90, >= -180 and <= 180) => Units.Position.FromDegrees(latitude.Value, longitude.Value),
        (null, _) or (_, null) => null,
        _ => throw origin.Refuse("position-impossible", $"{latitude}, {longitude} is no place. Latitude is −90 to 90, longitude −180 to 180 (east positive)."),
    };

    /// <summary>Refuses what no launch site on land or sea has.</summary>
    public static Altitude? Elevation(double? metres, Origin origin) => metres switch
    {
        null => null,
        >= -500 and <= 6000 => Altitude.FromMetres(metres.Value),
        _ => throw origin.Refuse("elevation-impossible", $"An elevation of {metres} m is not possible; −500 to 6,000 m are read."),
    };

    /// <summary>Refuses what no barometer at a launch site or altimeter setting shows.</summary>
    public static double? GroundPressure(double? hectopascals, Origin origin) => hectopascals switch
    {
        null or (>= 450 and <= 1100) => hectopascals,
        _ => throw origin.Refuse("pressure-impossible", $"A ground pressure of {hectopascals} is not possible; 450 to 1,100 hPa are read."),
    };
}
