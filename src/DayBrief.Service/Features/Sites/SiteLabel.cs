using System.Globalization;
using System.Text.RegularExpressions;
using DayBrief.Service.Languages;

namespace DayBrief.Service.Features.Sites;

/// <summary>What stands above each field of a site's page, also where its field is spoken of elsewhere.</summary>
internal static partial class SiteLabel
{
    /// <summary>Columns of the runways.</summary>
    public static readonly (string Column, string Name)[] Runways =
    [
        ("runwayDesignator", Language.Text("Runway")), ("runwayTrue", Language.Text("° true")), ("runwayMagnetic", Language.Text("° magnetic")),
        ("runwaySurface", Language.Text("Surface")),
    ];

    private static readonly Dictionary<string, string> Plain = new()
    {
        ["name"] = Language.Text("Name"),
        ["id"] = Language.Text("Short name"),
        ["latitude"] = Language.Text("Latitude, ° north"),
        ["longitude"] = Language.Text("Longitude, ° east"),
        ["timeZone"] = Language.Text("Time zone"),
        ["units"] = Language.Text("Units"),
        ["language"] = Language.Text("Language"),
        ["variation"] = Language.Text("Magnetic variation, ° east"),
        ["runways"] = Language.Text("Runways"),
        ["groundCover"] = Language.Text("Ground cover"),
        ["groundWetness"] = Language.Text("Usual ground"),
        ["terrainKind"] = Language.Text("Terrain"),
        ["terrain"] = Language.Text("The land in words"),
        ["ceilingNote"] = Language.Text("About that ceiling"),
        ["bankBeforeSolo"] = Language.Text("Steepest bank before solo, °"),
        ["bankLocalSolo"] = Language.Text("Steepest bank local solo, °"),
        ["bankCrossCountry"] = Language.Text("Steepest bank cross-country, °"),
        ["lowMargin"] = Language.Text("Margin over the stall low down, %"),
        ["leastVisibility"] = Language.Text("Least visibility, km"),
        ["sinking"] = Language.Text("Air aloft sinks, 10⁻⁶ per second"),
        ["cooling"] = Language.Text("Air aloft cools, °C per hour"),
        ["entrainment"] = Language.Text("Entrainment at the layer's top, 0 to 1"),
        ["launchMethods"] = Language.Text("Launching"),
        ["standingNotes"] = Language.Text("Standing notes"),
        ["emergencyLine"] = Language.Text("Emergency line"),
    };

    public static string Of(string field, SiteUnitsTyped units, Language language)
    {
        if (Plain.TryGetValue(field, out var label))
            return language[label];
        var runway = RunwayField().Match(field);
        if (runway.Success && Runways.FirstOrDefault(column => column.Column == runway.Groups[1].Value) is { Name: { } name })
            return language.Say($"{language[name]}, row {int.Parse(runway.Groups[2].Value, CultureInfo.InvariantCulture) + 1}");
        return field switch
        {
            "elevation" => language.Say($"Elevation, {units.HeightUnit}"),
            "usableDepth" => language.Say($"Usable depth, {units.HeightUnit}"),
            "usableClimb" => language.Say($"Usable climb, {units.ClimbUnit}"),
            "limitWind" => language.Say($"Wind, {units.SpeedUnit}"),
            "limitGust" => language.Say($"Gusts, {units.SpeedUnit}"),
            "limitBeforeSolo" => language.Say($"Crosswind before solo, {units.SpeedUnit}"),
            "limitLocalSolo" => language.Say($"Crosswind local solo, {units.SpeedUnit}"),
            "limitCrossCountry" => language.Say($"Crosswind cross-country, {units.SpeedUnit}"),
            "limitAnybody" => language.Say($"Crosswind for everybody, {units.SpeedUnit}"),
            "circlingBeforeSolo" => language.Say($"No circling below, before solo, {units.HeightUnit}"),
            "circlingLocalSolo" => language.Say($"No circling below, local solo, {units.HeightUnit}"),
            "circlingCrossCountry" => language.Say($"No circling below, cross-country, {units.HeightUnit}"),
            "lowBelow" => language.Say($"Low is below, {units.HeightUnit}"),
            "leastCeiling" => language.Say($"Least ceiling, {units.HeightUnit} above the field"),
            "ceiling" => language.Say($"Airspace ceiling, {units.HeightUnit} above sea level"),
            _ => field,
        };
    }

    [GeneratedRegex(@"^(runway\w+)-(\d{1,3})$")]
    private static partial Regex RunwayField();
}
