using System.Globalization;
using System.Text.RegularExpressions;
using DayBrief.Service.Infrastructure;

namespace DayBrief.Service.Features.Desk;

/// <summary>Brings what is wrong with the inputs of a brief to the field of the desk that it was entered in.</summary>
internal static partial class DeskField
{
    private static readonly string[] WindColumns = ["windDirection", "windSpeed", "windGust"];

    public static ProblemError Of(ProblemError error, DeskFields fields)
    {
        var field = Prefix().Replace(error.Field ?? "", "");
        var period = Period().Match(field);
        return error with
        {
            Field = period.Success
                ? $"{Column(period.Groups[1].Value, period.Groups[3].Value)}{Row(period.Groups[1].Value, int.Parse(period.Groups[2].Value, CultureInfo.InvariantCulture), fields)}"
                : field switch
                {
                    "soundingId" => "kept",
                    "ascentValidAt" => "ascentTime",
                    "qnhHpa" when field != error.Field => "qnh",
                    "triggerTemperatureC" => "judgedTrigger",
                    "usableTopAglM" => "judgedTop",
                    "climbMs" => "judgedClimb",
                    "name" => "siteName",
                    _ => field,
                },
        };
    }

    private static string Column(string list, string name) => name switch
    {
        "oktas" => "cloudOktas",
        "directionDeg" => "windDirection",
        "speedKt" => "windSpeed",
        "gustKt" => "windGust",
        _ => $"{list}From",
    };

    /// <summary>The row on the page: empty ones are not in the list.</summary>
    private static int Row(string list, int index, DeskFields fields) => Enumerable.Range(0, DeskFields.Periods)
        .Where(row => list == "cloud"
            ? fields[$"cloudOktas{row}"].Length > 0
            : WindColumns.Any(column => fields[$"{column}{row}"].Length > 0))
        .ElementAtOrDefault(index);

    [GeneratedRegex(@"^(?:site|assumptions|judgement)\.")]
    private static partial Regex Prefix();

    [GeneratedRegex(@"^(cloud|wind)ByHour\[(\d{1,2})\](?:\.(\w+))?$")]
    private static partial Regex Period();
}
