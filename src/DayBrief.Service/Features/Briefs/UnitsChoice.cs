using DayBrief.Days;
using DayBrief.Service.Infrastructure;

namespace DayBrief.Service.Features.Briefs;

/// <summary>Feet or metres: asked for in the link, else what the phone remembers; null for the site's own.</summary>
/// <remarks>Sheets do not follow it: what hangs at the launch point is in the site's units unless its link says otherwise.</remarks>
internal static class UnitsChoice
{
    public const string Parameter = "units";

    public const string Cookie = "daybrief-units";

    public static string? Of(HttpRequest request) => Known(request.Query[Parameter].FirstOrDefault()) ?? Known(request.Cookies[Cookie]);

    /// <summary>The name of known units; null otherwise.</summary>
    public static string? Known(string? name) => Choice.Parse<SiteUnits>(name) is { } units ? Choice.NameOf(units) : null;
}
