using System.Globalization;
using DayBrief.Service.Infrastructure;
using DayBrief.Service.Languages;
using Microsoft.AspNetCore.Http.HttpResults;

namespace DayBrief.Service.Features.People;

/// <summary>The audit log, one day at a time, in a time zone that the page names.</summary>
internal static class ShowAudit
{
    /// <summary>Setting: the zone in which the log is shown unless asked otherwise, an IANA name.</summary>
    public const string ZoneSetting = "DayBrief:TimeZone";

    internal static void Map(RouteGroupBuilder administration) => administration.MapGet("/audit", Show);

    private static RazorComponentResult<AuditPage> Show(string? day, string? zone, AuditLog audit, TimeProvider clock, IConfiguration configuration)
    {
        var errors = new FieldErrors();
        var named = string.IsNullOrWhiteSpace(zone) ? configuration[ZoneSetting] ?? "UTC" : zone.Trim();
        var shownIn = TimeZoneInfo.TryFindSystemTimeZoneById(named, out var found) ? found : TimeZoneInfo.Utc;
        if (found is null)
            errors.Add("zone", Language.Text("This is not a time zone."));
        var today = DateOnly.FromDateTime(TimeZoneInfo.ConvertTime(clock.GetUtcNow(), shownIn).DateTime);
        if (!DateOnly.TryParseExact(day, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out var shown)
            || shown.Year is < 2000 or > 2200)
        {
            if (!string.IsNullOrWhiteSpace(day))
                errors.Add("day", Language.Text("This is not a day."));
            shown = today;
        }

        return new(new Dictionary<string, object?>
        {
            [nameof(AuditPage.Entries)] = audit.Between(Midnight(shown, shownIn), Midnight(shown.AddDays(1), shownIn)),
            [nameof(AuditPage.Day)] = shown,
            [nameof(AuditPage.Zone)] = found is null ? named : shownIn.Id,
            [nameof(AuditPage.Shown)] = shownIn,
            [nameof(AuditPage.Refused)] = errors.All,
        })
        {
            StatusCode = errors.All.Count > 0 ? StatusCodes.Status422UnprocessableEntity : StatusCodes.Status200OK,
        };
    }

    /// <summary>The first moment of a local day, also where the clocks change at midnight.</summary>
    private static DateTimeOffset Midnight(DateOnly day, TimeZoneInfo zone) => LocalClock.InstantOf(day, TimeOnly.MinValue, zone);
}
