using System.Text.RegularExpressions;
using DayBrief.Service.Infrastructure;

namespace DayBrief.Service.Features.Sites;

/// <summary>Makes a site of the fields of its page; what is wrong is told at its field.</summary>
internal static partial class SiteFormReading
{
    /// <summary>The site, and what is wrong with it.</summary>
    /// <param name="fields">As typed.</param>
    /// <param name="before">As kept; null for a new one. What the page does not show stays.</param>
    public static (SiteJson Site, IReadOnlyList<ProblemError> Errors) Read(SiteFields fields, SiteJson? before)
    {
        var errors = new FieldErrors();
        var shown = before is null ? new SiteFields([]) : SiteFields.Of(before);
        var numbers = new TypedNumbers(fields, shown, errors);
        var variation = numbers.Of("variation", before?.MagneticVariationDeg, typed => typed);
        var runways = RunwayFields.Read(fields, shown, variation, numbers);
        var site = Words(fields, before ?? new()) with
        {
            Latitude = numbers.Of("latitude", before?.Latitude, typed => typed),
            Longitude = numbers.Of("longitude", before?.Longitude, typed => typed),
            ElevationM = numbers.Of("elevation", before?.ElevationM, fields.Typed.Metres),
            UsableDepthM = numbers.Of("usableDepth", before?.UsableDepthM, fields.Typed.Metres),
            UsableClimbMs = numbers.Of("usableClimb", before?.UsableClimbMs, fields.Typed.InMs),
            MagneticVariationDeg = variation,
            Runways = [.. runways.Select(row => row.Runway)],
        };
        site = SiteLimitFields.Read(site, fields, before, numbers);
        return (site, [.. Told(errors), .. Told(() => site.ToSite()).Select(error => AtItsField(error, runways)), .. Id(site.Id)]);
    }

    private static SiteJson Words(SiteFields fields, SiteJson before) => before with
    {
        Id = before.Id ?? fields.NullIfEmpty("id") ?? SiteId.Of(fields["name"]),
        Name = fields.NullIfEmpty("name"),
        TimeZone = fields.NullIfEmpty("timeZone"),
        Terrain = fields.NullIfEmpty("terrain"),
        TerrainKind = fields.NullIfEmpty("terrainKind"),
        GroundCover = fields.NullIfEmpty("groundCover"),
        GroundWetness = fields.NullIfEmpty("groundWetness"),
        Units = fields.NullIfEmpty("units"),
        Language = fields.NullIfEmpty("language"),
        LaunchMethods = fields.NullIfEmpty("launchMethods")?.Split(','),
        StandingNotes = fields.NullIfEmpty("standingNotes"),
        EmergencyLine = fields.NullIfEmpty("emergencyLine"),
    };

    private static IReadOnlyList<ProblemError> Told(FieldErrors errors) => Told(errors.ThrowIfAny);

    private static IReadOnlyList<ProblemError> Told(Action check)
    {
        try
        {
            check();
            return [];
        }
        catch (InvalidInputException refused)
        {
            return refused.Errors;
        }
    }

    private static IEnumerable<ProblemError> Id(string? id) =>
        SiteId.IsUsable(id) ? [] : [new(SiteId.Rule, Field: "id")];

    private static ProblemError AtItsField(ProblemError error, IReadOnlyList<(int Row, RunwayJson Runway)> runways)
    {
        var field = (error.Field ?? "")["site.".Length..];
        var runway = RunwayField().Match(field);
        if (runway.Success)
        {
            var column = runway.Groups[2].Value switch
            {
                "headingDeg" => "runwayTrue",
                "headingMagneticDeg" => "runwayMagnetic",
                "surface" => "runwaySurface",
                _ => "runwayDesignator",
            };
            return error with { Field = $"{column}-{runways[int.Parse(runway.Groups[1].Value, System.Globalization.CultureInfo.InvariantCulture)].Row}" };
        }

        return error with { Field = FieldOf(field) };
    }

    /// <summary>The field of the page for one of SITE.json.</summary>
    internal static string FieldOf(string field) => field switch
    {
        "elevationM" => "elevation",
        "usableDepthM" => "usableDepth",
        "usableClimbMs" => "usableClimb",
        "magneticVariationDeg" => "variation",
        "limits.windKt" or "windLimitKt" => "limitWind",
        "limits.gustKt" or "gustLimitKt" => "limitGust",
        "limits.crosswindKt.beforeSolo" => "limitBeforeSolo",
        "limits.crosswindKt.localSolo" => "limitLocalSolo",
        "limits.crosswindKt.crossCountry" => "limitCrossCountry",
        "crosswindLimitKt" => "limitAnybody",
        "limits.ceilingM" => "ceiling",
        "limits.ceilingNote" => "ceilingNote",
        "leastCirclingHeightM.beforeSolo" => "circlingBeforeSolo",
        "leastCirclingHeightM.localSolo" => "circlingLocalSolo",
        "leastCirclingHeightM.crossCountry" => "circlingCrossCountry",
        "steepestBankDeg.beforeSolo" => "bankBeforeSolo",
        "steepestBankDeg.localSolo" => "bankLocalSolo",
        "steepestBankDeg.crossCountry" => "bankCrossCountry",
        "lowStallMarginPct" => "lowMargin",
        "lowBelowM" => "lowBelow",
        "leastVisibilityM" => "leastVisibility",
        "leastCeilingM" => "leastCeiling",
        "sinkingPerS" => "sinking",
        "coolingKPerH" => "cooling",
        _ => field.Split('[')[0],
    };

    [GeneratedRegex(@"^runways\[(\d+)\]\.(\w+)$")]
    private static partial Regex RunwayField();
}
