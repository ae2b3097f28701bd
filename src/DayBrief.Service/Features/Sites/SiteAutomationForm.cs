using System.Globalization;
using DayBrief.Service.Infrastructure;

namespace DayBrief.Service.Features.Sites;

/// <summary>The fields of a site's automation in a form: there and back. <c>SiteAutomationFields</c> shows them.</summary>
internal static class SiteAutomationForm
{
    /// <summary>In front of every field's name, so that the fields can stand in a larger form.</summary>
    public const string Prefix = "automation.";

    /// <summary>The settings as they stand in the fields.</summary>
    public static IReadOnlyDictionary<string, string> Values(SiteAutomationJson? automation)
    {
        var set = automation ?? new();
        return new Dictionary<string, string?>
        {
            ["soundingAddress"] = set.SoundingAddress,
            ["station"] = set.Station,
            ["soundingHourUtc"] = Text(set.SoundingHourUtc),
            ["soundingAt"] = set.SoundingAt,
            ["draftAt"] = set.DraftAt,
            ["remindAt"] = set.RemindAt,
            ["metarAddress"] = set.MetarAddress,
            ["tafAddress"] = set.TafAddress,
            ["reportStation"] = set.ReportStation,
            ["reportElevationM"] = Text(set.ReportElevationM),
            ["reportsEveryMinutes"] = Text(set.ReportsEveryMinutes),
            ["reportsFrom"] = set.ReportsFrom,
            ["reportsTo"] = set.ReportsTo,
        }.ToDictionary(field => Prefix + field.Key, field => field.Value ?? "");
    }

    /// <summary>What the fields say, checked; null when all are empty: nothing is done by itself.</summary>
    /// <param name="field">The text of a field by its full name; empty when there is none.</param>
    /// <param name="errors">Is told what cannot be used.</param>
    public static SiteAutomationJson? Read(Func<string, string> field, FieldErrors errors)
    {
        string? Text(string name) => field(Prefix + name).Trim() is { Length: > 0 } text ? text : null;
        var automation = new SiteAutomationJson
        {
            SoundingAddress = Text("soundingAddress"),
            Station = Text("station"),
            SoundingHourUtc = (int?)Number("soundingHourUtc"),
            SoundingAt = Text("soundingAt"),
            DraftAt = Text("draftAt"),
            RemindAt = Text("remindAt"),
            MetarAddress = Text("metarAddress"),
            TafAddress = Text("tafAddress"),
            ReportStation = Text("reportStation"),
            ReportElevationM = Number("reportElevationM"),
            ReportsEveryMinutes = (int?)Number("reportsEveryMinutes"),
            ReportsFrom = Text("reportsFrom"),
            ReportsTo = Text("reportsTo"),
        };
        automation.Check(errors);
        return automation == new SiteAutomationJson() ? null : automation;

        double? Number(string name)
        {
            if (Text(name) is not { } text)
                return null;
            if (double.TryParse(text.Replace(',', '.'), NumberStyles.Float, CultureInfo.InvariantCulture, out var number) && Math.Abs(number) < 1e6)
                return number;
            errors.Add(Prefix + name, $"\"{text}\" is not a number.");
            return null;
        }
    }

    private static string? Text(double? number) => number?.ToString(CultureInfo.InvariantCulture);
}
