using System.Text.Json;
using DayBrief.Days;
using DayBrief.Service.Infrastructure;
using DayBrief.Units;

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

    public SiteAutomationJson? Automation { get; init; }

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
        Runways = [.. site.Runways.Select(runway => new RunwayJson(runway.Designator, runway.HeadingDegrees, runway.Surface))],
        UsableDepthM = site.UsableDepth.Metres,
        UsableClimbMs = site.UsableClimb.MetresPerSecond,
        Units = Choice.NameOf(site.Units),
        Terrain = site.Terrain,
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
            throw InvalidInputException.Field(bad.Path ?? "site", $"The site is not JSON as expected: {bad.Message}");
        }
    }

    /// <exception cref="InvalidInputException">A required field is missing or one is out of range; all are named.</exception>
    public Site ToSite()
    {
        var errors = new FieldErrors("site");
        var latitude = errors.Number("latitude", Latitude, -90, 90);
        var longitude = errors.Number("longitude", Longitude, -180, 180);
        var elevation = errors.Number("elevationM", ElevationM, -500, 6000);
        var zone = Zone(errors);
        var cover = errors.OneOf("groundCover", GroundCover, BoundaryLayer.GroundCover.Grass);
        var wetness = errors.OneOf("groundWetness", GroundWetness, BoundaryLayer.GroundWetness.Normal);
        var units = errors.OneOf("units", Units, SiteUnits.FeetAndKnots);
        var depth = errors.Number("usableDepthM", UsableDepthM ?? Site.DefaultUsableDepthM, 100, 5000);
        var climb = errors.Number("usableClimbMs", UsableClimbMs ?? Site.DefaultUsableClimbMs, 0, 5);
        foreach (var runway in Runways ?? [])
            errors.Number($"runways[{runway.Designator}].headingDeg", runway.HeadingDeg, 0, 360);
        Automation?.Check(errors);
        errors.ThrowIfAny();
        return new()
        {
            Id = Id ?? "site",
            Name = Name ?? "Unnamed site",
            Position = Position.FromDegrees(latitude, longitude),
            Elevation = Altitude.FromMetres(elevation),
            TimeZone = zone,
            GroundCover = cover,
            GroundWetness = wetness,
            Runways = [.. (Runways ?? []).Select(runway => new Runway(runway.Designator ?? "?", runway.HeadingDeg!.Value, runway.Surface))],
            UsableDepth = Height.FromMetres(depth),
            UsableClimb = Speed.FromMetresPerSecond(climb),
            Units = units,
            Terrain = Terrain,
        };
    }

    private TimeZoneInfo Zone(FieldErrors errors)
    {
        if (TimeZone is not null && TimeZoneInfo.TryFindSystemTimeZoneById(TimeZone, out var zone))
            return zone;
        errors.Add("timeZone", TimeZone is null
            ? "timeZone is required: an IANA name such as Europe/Paris."
            : $"timeZone \"{TimeZone}\" is not known; give an IANA name such as Europe/Paris.");
        return TimeZoneInfo.Utc;
    }
}

/// <summary>One direction of a runway as the outside contract names it.</summary>
public sealed record RunwayJson(string? Designator, double? HeadingDeg, string? Surface);
