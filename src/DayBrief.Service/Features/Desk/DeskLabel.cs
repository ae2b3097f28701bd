using System.Text.RegularExpressions;
using DayBrief.Service.Languages;

namespace DayBrief.Service.Features.Desk;

/// <summary>What stands above each field of the desk, also where its field is spoken of elsewhere.</summary>
internal static partial class DeskLabel
{
    /// <summary>Columns of the typed levels.</summary>
    public static readonly (string Column, string Name)[] Levels =
    [
        ("p", Language.Text("Pressure in hPa")), ("h", Language.Text("Height above sea level in m")), ("t", Language.Text("Temperature in °C")),
        ("d", Language.Text("Dew point in °C")), ("wd", Language.Text("Wind direction in degrees")), ("ws", Language.Text("Wind speed in knots")),
    ];

    /// <summary>Columns of cloud and wind by the hour; a local time shows how it is written.</summary>
    public static readonly (string Column, string Name, string Hint)[] Periods =
    [
        ("cloudFrom", Language.Text("Cloud from, local time"), "13:00"), ("cloudOktas", Language.Text("Cloud in oktas"), ""),
        ("windFrom", Language.Text("Wind from, local time"), "13:00"), ("windDirection", Language.Text("Wind direction in degrees"), ""),
        ("windSpeed", Language.Text("Wind speed in knots"), ""), ("windGust", Language.Text("Gusts in knots"), ""),
    ];

    private static readonly Dictionary<string, string> Single = new()
    {
        ["kept"] = Language.Text("The ascent in use"),
        ["text"] = Language.Text("The ascent"),
        ["file"] = Language.Text("The file"),
        ["ascentDate"] = Language.Text("Day it was made, UTC"),
        ["ascentTime"] = Language.Text("Time it was made, UTC"),
        ["ascentConfirmed"] = Language.Text("Values to look at"),
        ["station"] = Language.Text("Station"),
        ["qnhHpa"] = Language.Text("QNH, hPa"),
        ["ascentIndex"] = Language.Text("Which ascent of the input"),
        ["ascentLatitude"] = Language.Text("Latitude, ° north"),
        ["ascentLongitude"] = Language.Text("Longitude, ° east"),
        ["ascentElevationM"] = Language.Text("Elevation, m"),
        ["site"] = Language.Text("Site"),
        ["date"] = Language.Text("Date"),
        ["runway"] = Language.Text("Runway in use"),
        ["preparedBy"] = Language.Text("Prepared by"),
        ["siteName"] = Language.Text("Name"),
        ["latitude"] = Language.Text("Latitude, ° north"),
        ["longitude"] = Language.Text("Longitude, ° east"),
        ["elevationM"] = Language.Text("Elevation, m"),
        ["timeZone"] = Language.Text("Time zone, such as Europe/Paris"),
        ["usableDepthM"] = Language.Text("Usable depth, m"),
        ["groundCover"] = Language.Text("Ground cover"),
        ["groundWetness"] = Language.Text("Ground today"),
        ["units"] = Language.Text("Units"),
        ["maxTemperatureC"] = Language.Text("Highest temperature expected, °C"),
        ["cloudOktas"] = Language.Text("Cloud above the thermals, oktas 0 to 8"),
        ["qnh"] = Language.Text("QNH of the field, hPa"),
        ["observation"] = Language.Text("Latest METAR of the field or near it"),
        ["forecast"] = Language.Text("Latest TAF"),
        ["judgedTrigger"] = Language.Text("Trigger, °C"),
        ["judgedTriggerTime"] = Language.Text("Trigger, local time"),
        ["judgedLast"] = Language.Text("Last thermal, local time"),
        ["judgedReason"] = Language.Text("Why"),
        ["dayLimits"] = Language.Text("Limits of the day"),
        ["instructorNote"] = Language.Text("Note to all"),
        ["noteBeforeSolo"] = Language.Text("Before first solo"),
        ["noteLocalSolo"] = Language.Text("Local solo"),
        ["noteCrossCountry"] = Language.Text("Cross-country"),
        ["validUntil"] = Language.Text("Valid until, local time"),
    };

    /// <param name="field">The field's name in the form.</param>
    /// <param name="language">The reader's.</param>
    /// <param name="metric">The site reads metres.</param>
    public static string Of(string field, Language language, bool metric)
    {
        if (Single.TryGetValue(field, out var label))
            return language[label];
        if (field == "judgedTop")
            return language.Say($"Usable top, {(metric ? "m" : "ft")} above the field");
        if (field == "judgedClimb")
            return language.Say($"Climb, {(metric ? "m/s" : "kt")}");
        var cell = Cell().Match(field);
        var row = cell.Success ? int.Parse(cell.Groups[2].Value, System.Globalization.CultureInfo.InvariantCulture) + 1 : 0;
        if (Levels.FirstOrDefault(level => level.Column == cell.Groups[1].Value) is { Name: { } name })
            return language.Say($"{language[name]}, level {row}");
        return Periods.FirstOrDefault(period => period.Column == cell.Groups[1].Value) is { Name: { } period }
            ? language.Say($"{language[period]}, period {row}")
            : field;
    }

    [GeneratedRegex(@"^([a-zA-Z]+)(\d{1,3})$")]
    private static partial Regex Cell();
}
