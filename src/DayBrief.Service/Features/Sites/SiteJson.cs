using System.Text.Json;
using DayBrief.Days;
using DayBrief.Service.Infrastructure;

namespace DayBrief.Service.Features.Sites;

/// <summary>A launch site as the outside contract names it (SITE.json). Only position, elevation and time zone are required.</summary>
public sealed record SiteJson
{
    public string? Id { get; init; }

    public string? Name { get; init; }

    public double? Latitude { get; init; }

    public double? Longitude { get; init; }

    public double? ElevationM { get; init; }

    public string? TimeZone { get; init; }

    public string? GroundCover { get; init; }

    public string? GroundWetness { get; init; }

    public IReadOnlyList<RunwayJson>? Runways { get; init; }

    public double? UsableDepthM { get; init; }

    public double? UsableClimbMs { get; init; }

    public string? Units { get; init; }

    public string? Terrain { get; init; }

    /// <summary>What kind of land lies around it: flat, hills or mountains.</summary>
    public string? TerrainKind { get; init; }

    /// <summary>True minus magnetic direction, degrees, east positive.</summary>
    public double? MagneticVariationDeg { get; init; }

    public SiteLimitsJson? Limits { get; init; }

    /// <summary>Nobody of the group circles below it, above the field.</summary>
    public ByExperienceJson? LeastCirclingHeightM { get; init; }

    /// <summary>Steepest bank advised to the group.</summary>
    public ByExperienceJson? SteepestBankDeg { get; init; }

    /// <summary>Least margin over the stall in the turn low down, per cent.</summary>
    public double? LowStallMarginPct { get; init; }

    /// <summary>Height above the field up to which it is low.</summary>
    public double? LowBelowM { get; init; }

    /// <summary>The same as <c>limits.windKt</c>; of two the smaller holds.</summary>
    public double? WindLimitKt { get; init; }

    /// <summary>The same as <c>limits.gustKt</c>; of two the smaller holds.</summary>
    public double? GustLimitKt { get; init; }

    /// <summary>For everybody; <c>limits.crosswindKt</c> holds where a group's own is smaller.</summary>
    public double? CrosswindLimitKt { get; init; }

    /// <summary>Visibility below which the site does not launch.</summary>
    public double? LeastVisibilityM { get; init; }

    /// <summary>Base above the field of broken or overcast cloud below which the site does not launch.</summary>
    public double? LeastCeilingM { get; init; }

    /// <summary>Divergence of the air aloft: it sinks by this share of its height each second.</summary>
    public double? SinkingPerS { get; init; }

    /// <summary>Cooling of the free air over the day.</summary>
    public double? CoolingKPerH { get; init; }

    /// <summary>Entrainment ratio at the layer's top.</summary>
    public double? Entrainment { get; init; }

    /// <summary>Any of winch, aerotow, car-tow, self-launch, bungee.</summary>
    public IReadOnlyList<string>? LaunchMethods { get; init; }

    /// <summary>Code of the language that people at the site read.</summary>
    public string? Language { get; init; }

    public string? StandingNotes { get; init; }

    public string? EmergencyLine { get; init; }

    public SiteAutomationJson? Automation { get; init; }

    public SiteSendingJson? Sending { get; init; }

    public static SiteJson Of(Site site) => new()
    {
        Id = site.Id,
        Name = site.Name,
        Latitude = site.Position.LatitudeDegrees,
        Longitude = site.Position.LongitudeDegrees,
        ElevationM = site.Elevation.Metres,
        TimeZone = site.TimeZone.Id,
        GroundCover = Choice.NameOf(site.GroundCover),
        GroundWetness = Choice.NameOf(site.GroundWetness),
        Runways = [.. site.Runways.Select(RunwayJson.Of)],
        UsableDepthM = site.UsableDepth.Metres,
        UsableClimbMs = site.UsableClimb.MetresPerSecond,
        Units = Choice.NameOf(site.Units),
        Terrain = site.Terrain,
        TerrainKind = site.TerrainKind is { } kind ? Choice.NameOf(kind) : null,
        MagneticVariationDeg = site.MagneticVariationDegrees,
        Limits = SiteLimitsJson.Of(site.Limits),
        LeastCirclingHeightM = ByExperienceJson.Of(site.Limits.Circling.LeastHeight, height => height.Metres),
        SteepestBankDeg = ByExperienceJson.Of(site.Limits.Circling.SteepestBankDegrees, degrees => degrees),
        LowStallMarginPct = site.Limits.Circling.LowMarginPct,
        LowBelowM = site.Limits.Circling.LowBelow?.Metres,
        WindLimitKt = Json.Rounded(site.Limits.Wind?.Knots, 2),
        GustLimitKt = Json.Rounded(site.Limits.Gust?.Knots, 2),
        CrosswindLimitKt = Json.Rounded(site.Limits.Crosswind.Anybody?.Knots, 2),
        LeastVisibilityM = site.Limits.LeastVisibilityM,
        LeastCeilingM = site.Limits.LeastCloudCeiling?.Metres,
        SinkingPerS = site.SinkingPerSecond,
        CoolingKPerH = site.CoolingKelvinsPerHour,
        Entrainment = site.EntrainmentRatio,
        LaunchMethods = site.LaunchMethods.IsEmpty ? null : [.. site.LaunchMethods.Select(Choice.NameOf)],
        Language = site.Language,
        StandingNotes = site.StandingNotes,
        EmergencyLine = site.EmergencyLine,
    };

    /// <exception cref="InvalidInputException">Not JSON of this shape.</exception>
    public static SiteJson Parse(string json)
    {
        try
        {
            return JsonSerializer.Deserialize<SiteJson>(json, Json.Line) ?? throw InvalidInputException.Field("site", "The site is empty.");
        }
        catch (JsonException bad)
        {
            throw InvalidInputException.Field(bad.Path ?? "site", $"This is not JSON as expected, at character {(bad.BytePositionInLine ?? 0) + 1} of line {(bad.LineNumber ?? 0) + 1}.");
        }
    }

    /// <exception cref="InvalidInputException">A required field is missing or one is out of range; all are named.</exception>
    public Site ToSite() => SiteReading.Of(this);
}
