using DayBrief.Service.Languages;

namespace DayBrief.Service.Features.Sites;

/// <summary>What stands above each field of a site's automation, also where its field is spoken of elsewhere.</summary>
internal static class SiteAutomationLabel
{
    private static readonly Dictionary<string, string> Labels = new()
    {
        ["soundingAddress"] = Language.Text("Address of the ascent"),
        ["station"] = Language.Text("Station"),
        ["soundingHourUtc"] = Language.Text("Hour of the ascent, UTC"),
        ["soundingAt"] = Language.Text("Fetched at, local time"),
        ["draftAt"] = Language.Text("Prepared at, local time"),
        ["remindAt"] = Language.Text("Reminder if not signed by, local time"),
        ["metarAddress"] = Language.Text("Address of the METAR"),
        ["tafAddress"] = Language.Text("Address of the TAF"),
        ["reportStation"] = Language.Text("Location indicator"),
        ["reportElevationM"] = Language.Text("Elevation of that station, m"),
        ["reportsEveryMinutes"] = Language.Text("Every … minutes"),
        ["reportsFrom"] = Language.Text("From, local time"),
        ["reportsTo"] = Language.Text("To, local time"),
    };

    public static string Of(string field, Language language) =>
        Labels.TryGetValue(field[(field.LastIndexOf('.') + 1)..], out var label) ? language[label] : field;
}
