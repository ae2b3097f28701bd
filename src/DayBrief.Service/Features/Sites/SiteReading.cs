using DayBrief.Days;
using DayBrief.Flight.Terrain;
using DayBrief.Service.Infrastructure;
using DayBrief.Texts;
using DayBrief.Units;

namespace DayBrief.Service.Features.Sites;

/// <summary>Makes a site of its JSON and names everything that is wrong with it at once.</summary>
internal static class SiteReading
{
    private const int MostRunways = 24;

    /// <exception cref="InvalidInputException">A required field is missing or one is out of range; all are named.</exception>
    public static Site Of(SiteJson json)
    {
        var errors = new FieldErrors("site");
        var variation = errors.Optional("magneticVariationDeg", json.MagneticVariationDeg);
        Texts(json, errors);
        var site = new Site
        {
            Id = json.Id ?? "site",
            Name = json.Name ?? "Unnamed site",
            Position = Position.FromDegrees(errors.Number("latitude", json.Latitude), errors.Number("longitude", json.Longitude)),
            Elevation = Altitude.FromMetres(errors.Number("elevationM", json.ElevationM)),
            TimeZone = Zone(json.TimeZone, errors),
            GroundCover = errors.OneOf("groundCover", json.GroundCover, BoundaryLayer.GroundCover.Grass),
            GroundWetness = errors.OneOf("groundWetness", json.GroundWetness, BoundaryLayer.GroundWetness.Normal),
            Runways = [.. Runways(json.Runways ?? [], variation, errors)],
            UsableDepth = Height.FromMetres(errors.Number("usableDepthM", json.UsableDepthM ?? Site.DefaultUsableDepthM)),
            UsableClimb = Speed.FromMetresPerSecond(errors.Number("usableClimbMs", json.UsableClimbMs ?? Site.DefaultUsableClimbMs)),
            Units = errors.OneOf("units", json.Units, SiteUnits.FeetAndKnots),
            Terrain = json.Terrain,
            TerrainKind = errors.OneOf<TerrainKind>("terrainKind", json.TerrainKind),
            MagneticVariationDegrees = variation,
            Limits = SiteLimitsReading.Of(json, errors),
            SinkingPerSecond = errors.Optional("sinkingPerS", json.SinkingPerS),
            CoolingKelvinsPerHour = errors.Optional("coolingKPerH", json.CoolingKPerH),
            EntrainmentRatio = errors.Optional("entrainment", json.Entrainment),
            LaunchMethods = [.. LaunchMethods(json.LaunchMethods ?? [], errors)],
            Language = json.Language,
            StandingNotes = json.StandingNotes,
            EmergencyLine = json.EmergencyLine,
        };
        json.Automation?.Check(errors);
        json.Sending?.Check(errors);
        errors.ThrowIfAny();
        return site;
    }

    private static IEnumerable<Runway> Runways(IReadOnlyList<RunwayJson> runways, double? variation, FieldErrors errors)
    {
        if (runways.Count > MostRunways)
            errors.Add("runways", $"At most {MostRunways} directions; there are {runways.Count}.");
        for (var i = 0; i < Math.Min(runways.Count, MostRunways); i++)
            yield return (runways[i] ?? new(null, null)).ToRunway($"runways[{i}]", variation, errors);
    }

    private static IEnumerable<LaunchMethod> LaunchMethods(IReadOnlyList<string> names, FieldErrors errors) =>
        names.Select((name, i) => errors.OneOf<LaunchMethod>($"launchMethods[{i}]", name)).OfType<LaunchMethod>().Distinct();

    private static void Texts(SiteJson json, FieldErrors errors)
    {
        errors.Length("id", json.Id, 64);
        errors.Length("name", json.Name, 80);
        errors.Length("terrain", json.Terrain, 200);
        errors.Length("standingNotes", json.StandingNotes, 2000);
        errors.Length("emergencyLine", json.EmergencyLine, 300);
        if (json.Language is { } code && Languages.Language.Named(code) is null)
            errors.Add("language", $"Needs one of {string.Join(", ", Languages.Language.All.Select(language => language.Code))}; it is \"{code}\".");
    }

    private static TimeZoneInfo Zone(string? name, FieldErrors errors)
    {
        if (name is not null && TimeZoneInfo.TryFindSystemTimeZoneById(name, out var zone))
            return zone;
        errors.Add("timeZone", name is null
            ? Words.Of($"Needs an IANA name such as {"Europe/Paris"}.")
            : Words.Of($"\"{name}\" is no time zone known here. An IANA name is needed, such as {Suggestion(name)}."));
        return TimeZoneInfo.Utc;
    }

    private static string Suggestion(string name) =>
        TimeZoneNames.Like(name) is { Count: > 0 } like ? string.Join(", ", like) : "Europe/Paris";
}
