using System.Collections.Immutable;
using DayBrief.BoundaryLayer;
using DayBrief.Flight.Terrain;
using DayBrief.Units;

namespace DayBrief.Days;

/// <summary>The launch site that a day is computed for. Only position, elevation and time zone have no default.</summary>
public sealed record Site
{
    /// <summary>Depth of usable thermals when the site sets none: 600 m (about 2,000 ft), from which a glider still
    /// reaches the circuit. Common practice, no source.</summary>
    public const double DefaultUsableDepthM = 600;

    /// <summary>Climb worth stopping for when the site sets none: 0.5 m/s (1 kt). Common practice, no source.</summary>
    public const double DefaultUsableClimbMs = 0.5;

    /// <summary>Short name for programs.</summary>
    public string Id { get; init; } = "site";

    /// <summary>Name for people.</summary>
    public string Name { get; init; } = "Site";

    /// <summary>Where it is.</summary>
    public required Position Position { get; init; }

    /// <summary>Height of the ground above mean sea level.</summary>
    public required Altitude Elevation { get; init; }

    /// <summary>Its time zone.</summary>
    public required TimeZoneInfo TimeZone { get; init; }

    /// <summary>What mostly covers the ground around it.</summary>
    public GroundCover GroundCover { get; init; } = GroundCover.Grass;

    /// <summary>How wet that ground is today.</summary>
    public GroundWetness GroundWetness { get; init; } = GroundWetness.Normal;

    /// <summary>Runways; empty when the site states none.</summary>
    public ImmutableArray<Runway> Runways { get; init; } = [];

    /// <summary>Depth that thermals must reach to be usable here.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside 100 to 5000 m.</exception>
    public Height UsableDepth
    {
        get;
        init => field = Height.FromMetres(Guard.Finite(value.Metres, 100, 5000));
    } = Height.FromMetres(DefaultUsableDepthM);

    /// <summary>Climb that thermals must give to be usable here.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside 0 to 5 m/s.</exception>
    public Speed UsableClimb
    {
        get;
        init => field = Speed.FromMetresPerSecond(Guard.Finite(value.MetresPerSecond, 0, 5));
    } = Speed.FromMetresPerSecond(DefaultUsableClimbMs);

    /// <summary>Units that people at the site read.</summary>
    public SiteUnits Units { get; init; } = SiteUnits.FeetAndKnots;

    /// <summary>The land around it in words, such as "plain, hills from 10 km south".</summary>
    public string? Terrain { get; init; }

    /// <summary>What kind of land lies around it; null when not stated.</summary>
    public TerrainKind? TerrainKind { get; init; }

    /// <summary>Magnetic variation, degrees, east positive: true direction minus magnetic direction. Null when not stated.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside −180 to 180°.</exception>
    public double? MagneticVariationDegrees
    {
        get;
        init => field = value is { } known ? Guard.Finite(known, -180, 180) : null;
    }

    /// <summary>The site's own limits; those it does not state are null.</summary>
    public SiteLimits Limits { get; init; } = new();

    /// <summary>Divergence of the air aloft as people here find it, 1/s: it sinks by this share of its height each second. Null
    /// when not stated.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside −0.0001 to 0.0001 1/s.</exception>
    public double? SinkingPerSecond
    {
        get;
        init => field = value is { } known ? Guard.Finite(known, -1e-4, 1e-4) : null;
    }

    /// <summary>Cooling of the free air over the day, K/h; null when not stated.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside −3 to 3 K/h.</exception>
    public double? CoolingKelvinsPerHour
    {
        get;
        init => field = value is { } known ? Guard.Finite(known, -3, 3) : null;
    }

    /// <summary>Entrainment ratio at the layer's top; null when not stated.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside 0 to 1.</exception>
    public double? EntrainmentRatio
    {
        get;
        init => field = value is { } known ? Guard.Finite(known, 0, 1) : null;
    }

    /// <summary>How people launch here; empty when not stated.</summary>
    public ImmutableArray<LaunchMethod> LaunchMethods { get; init; } = [];

    /// <summary>Code of the language that people here read, such as "de"; null when not stated.</summary>
    public string? Language { get; init; }

    /// <summary>What the site says every day.</summary>
    public string? StandingNotes { get; init; }

    /// <summary>Whom to call in an emergency, and how.</summary>
    public string? EmergencyLine { get; init; }
}

/// <summary>Units for people; computations and programs use SI or the unit in the name.</summary>
public enum SiteUnits
{
    /// <summary>Feet and knots.</summary>
    FeetAndKnots,

    /// <summary>Metres and metres per second.</summary>
    Metric,
}
