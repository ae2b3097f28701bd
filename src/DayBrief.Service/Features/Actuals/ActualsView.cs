using System.Globalization;
using DayBrief.Service.Features.Sites;
using DayBrief.Service.Infrastructure;
using DayBrief.Service.Languages;

namespace DayBrief.Service.Features.Actuals;

/// <summary>What the launch point's page shows.</summary>
/// <param name="In">The reader's language.</param>
/// <param name="Site">The field.</param>
/// <param name="Zone">Its time zone.</param>
/// <param name="Date">The day.</param>
/// <param name="IsToday">It is today at the field.</param>
/// <param name="Entries">What has been written down.</param>
/// <param name="Reports">METARs of the day as they came.</param>
/// <param name="Fields">What was typed and not taken.</param>
/// <param name="Errors">Why not.</param>
internal sealed record ActualsView(
    Language In, SiteJson Site, TimeZoneInfo Zone, DateOnly Date, bool IsToday, IReadOnlyList<Actual> Entries, IReadOnlyList<string> Reports, ActualFields Fields, IReadOnlyList<ProblemError> Errors)
{
    public SiteUnitsTyped Units { get; } = SiteUnitsTyped.Of(Site);

    public string Day => Date.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);

    public string Address => $"/fields/{Uri.EscapeDataString(Site.Id!)}/actuals";

    public string Time(Actual entry) => TimeZoneInfo.ConvertTime(entry.At, Zone).ToString("HH:mm", CultureInfo.InvariantCulture);

    public string ApiAddress => $"/api/v1/days/{Uri.EscapeDataString(Site.Id!)}/";

    /// <summary>What one typed unit is, for the page's script.</summary>
    public static string Factor(Func<double, double> inSi) => inSi(1).ToString("R", CultureInfo.InvariantCulture);

    /// <summary>The figures of an entry, in the site's units.</summary>
    public string Words(Actual entry) => string.Join(" · ", Parts(entry));

    private IEnumerable<string> Parts(Actual entry)
    {
        if (entry.Kind == ActualKind.FirstThermal)
            yield return In["first thermal [entry]"];
        if (entry.Kind == ActualKind.LastThermal)
            yield return In["last thermal [entry]"];
        if (entry.TopM is { } top)
            yield return In.Say($"top {Units.Height(top)} {Units.HeightUnit}");
        if (entry.ClimbMs is { } climb)
            yield return In.Say($"climb {Units.Ms(climb)} {Units.ClimbUnit}");
        if (entry.CloudBaseM is { } low)
            yield return In.Say($"base {Units.Height(low)} {Units.HeightUnit}");
        if (entry.CloudOktas is { } oktas)
            yield return In.Say($"cloud {oktas}/8");
        if (entry.WindFromDeg is { } from)
            yield return In.Say($"wind from {from:000}°");
        if (entry.WindKt is { } wind)
            yield return In.Say($"wind {Units.Knots(wind)} {Units.SpeedUnit}");
        if (entry.GustKt is { } gust)
            yield return In.Say($"gusts {Units.Knots(gust)} {Units.SpeedUnit}");
        if (entry.Note is { } note)
            yield return note;
        if (entry.By is { } by)
            yield return by;
    }
}
