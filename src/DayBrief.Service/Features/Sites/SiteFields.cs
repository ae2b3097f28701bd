using DayBrief.Days;
using DayBrief.Service.Infrastructure;

namespace DayBrief.Service.Features.Sites;

/// <summary>What stands in the fields of a site's page, word for word, so that nothing is lost when it is refused.</summary>
public sealed class SiteFields
{
    private readonly Dictionary<string, string> _values;

    internal SiteFields(Dictionary<string, string> values) => _values = values;

    /// <summary>The text as entered, or empty.</summary>
    public string this[string field] => _values.GetValueOrDefault(field, "");

    /// <summary>All that stands in them.</summary>
    internal IReadOnlyDictionary<string, string> Values => _values;

    /// <summary>Rows for runways: those that are filled and four more.</summary>
    public int RunwayRows =>
        Math.Min(24, 4 + _values.Where(typed => typed.Key.StartsWith("runway", StringComparison.Ordinal) && typed.Value.Length > 0)
            .Select(typed => int.TryParse(typed.Key.AsSpan(typed.Key.LastIndexOf('-') + 1), out var row) ? row + 1 : 0).DefaultIfEmpty(0).Max());

    /// <summary>The units that the figures are typed in: those of the page, not those just chosen for the next time.</summary>
    internal SiteUnitsTyped Typed => new(Choice.Parse<SiteUnits>(this["typedIn"]) ?? SiteUnits.FeetAndKnots);

    internal static async Task<SiteFields> ReadAsync(HttpRequest request, CancellationToken stopping)
    {
        var form = await request.ReadFormAsync(stopping);
        return new(form.Where(field => !field.Key.StartsWith("__", StringComparison.Ordinal))
            .ToDictionary(field => field.Key, field => string.Join(',', field.Value.ToArray()).ReplaceLineEndings("\n").Trim()));
    }

    /// <summary>The fields of a kept site.</summary>
    internal static SiteFields Of(SiteJson site)
    {
        var units = SiteUnitsTyped.Of(site);
        var values = new Dictionary<string, string?>
        {
            ["id"] = site.Id,
            ["typedIn"] = Choice.NameOf(Choice.Parse<SiteUnits>(site.Units) ?? SiteUnits.FeetAndKnots),
            ["name"] = site.Name,
            ["latitude"] = SiteUnitsTyped.Number(site.Latitude, 6),
            ["longitude"] = SiteUnitsTyped.Number(site.Longitude, 6),
            ["elevation"] = units.Height(site.ElevationM),
            ["timeZone"] = site.TimeZone,
            ["terrain"] = site.Terrain,
            ["terrainKind"] = site.TerrainKind,
            ["groundCover"] = site.GroundCover,
            ["groundWetness"] = site.GroundWetness,
            ["units"] = site.Units,
            ["language"] = site.Language,
            ["usableDepth"] = units.Height(site.UsableDepthM ?? Site.DefaultUsableDepthM),
            ["usableClimb"] = units.Ms(site.UsableClimbMs ?? Site.DefaultUsableClimbMs),
            ["variation"] = SiteUnitsTyped.Number(site.MagneticVariationDeg, 1),
            ["launchMethods"] = string.Join(',', site.LaunchMethods ?? []),
            ["standingNotes"] = site.StandingNotes,
            ["emergencyLine"] = site.EmergencyLine,
        };
        SiteLimitFields.Put(site, units, values);
        RunwayFields.Put(site, values);
        return new(values.Where(field => !string.IsNullOrEmpty(field.Value)).ToDictionary(field => field.Key, field => field.Value!));
    }

    internal string? NullIfEmpty(string field) => string.IsNullOrWhiteSpace(this[field]) ? null : this[field];

    internal bool Chosen(string field, string choice) => this[field].Split(',').Contains(choice);
}
