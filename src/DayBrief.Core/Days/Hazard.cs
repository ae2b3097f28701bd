using System.Collections.Immutable;

namespace DayBrief.Days;

/// <summary>What can hurt someone, by what it is.</summary>
public enum HazardKind
{
    /// <summary>Thunder is possible.</summary>
    Thunder,

    /// <summary>A forecast for an aerodrome names thunder or strong gusts.</summary>
    Forecast,

    /// <summary>The ascent holds the energy for thunder, though the computed day does not release it.</summary>
    ThunderInStore,

    /// <summary>Mean wind above the site's own limit.</summary>
    WindOverLimit,

    /// <summary>Gusts above the site's own limit.</summary>
    GustOverLimit,

    /// <summary>Showers are likely.</summary>
    Showers,

    /// <summary>Cumulus grows too tall to soar under.</summary>
    Overdevelopment,

    /// <summary>Cumulus spreads out and takes the sun away.</summary>
    SpreadOut,

    /// <summary>Air that falls out of and beside tall or spreading cloud.</summary>
    Downdraught,

    /// <summary>Gusts far above the mean wind.</summary>
    Gusts,

    /// <summary>Wind at the ground.</summary>
    SurfaceWind,

    /// <summary>Wind across a runway.</summary>
    Crosswind,

    /// <summary>Wind or shear in the layer that tears thermals.</summary>
    WindAloft,

    /// <summary>A maximum of wind close to the ground: gradient on the approach.</summary>
    WindGradient,

    /// <summary>Low cloud base.</summary>
    LowCloud,

    /// <summary>Poor visibility, reported or forecast.</summary>
    PoorVisibility,

    /// <summary>Thermals usable only close to the ground.</summary>
    LowTops,

    /// <summary>Thermals that stay low for long before they grow.</summary>
    LowThermalling,

    /// <summary>Gliders close together: few or narrow thermals, or little height.</summary>
    CirclingTogether,

    /// <summary>Hills or mountains around the site.</summary>
    Terrain,

    /// <summary>Thermals reach above the ceiling that the site states.</summary>
    Ceiling,

    /// <summary>Thermals that carry a glider to the cloud.</summary>
    CloudClearance,

    /// <summary>Freezing within reach of the thermals.</summary>
    Icing,

    /// <summary>Heights at which oxygen matters.</summary>
    Oxygen,

    /// <summary>Thin air at launch.</summary>
    DensityAltitude,

    /// <summary>Heat on the ground and under the canopy.</summary>
    Heat,

    /// <summary>Cold.</summary>
    Cold,

    /// <summary>Ultraviolet light from which people protect themselves.</summary>
    Ultraviolet,

    /// <summary>Thermals that stop within minutes of shade.</summary>
    SuddenEnd,

    /// <summary>Thermals may last until close to sunset.</summary>
    LastLight,
}

/// <summary>One hazard that the day gives cause for. Words are the reader's business: these are the figures.</summary>
/// <param name="Kind">What it is.</param>
/// <param name="Value">Its figure in SI (height m, speed m/s, temperature °C), as <see cref="Hazards"/> says for each kind.</param>
public sealed record Hazard(HazardKind Kind, double? Value = null)
{
    /// <summary>From when; null for all day.</summary>
    public DateTimeOffset? From { get; init; }

    /// <summary>Until when; null where it has no known end.</summary>
    public DateTimeOffset? To { get; init; }

    /// <summary>The runway, station or other thing it is about.</summary>
    public string? About { get; init; }

    /// <summary>How it is known; null for what is computed.</summary>
    public WindSource? Source { get; init; }

    /// <summary>Limits of the site that it passes, the lowest first.</summary>
    public ImmutableArray<PassedLimit> Passed { get; init; } = [];
}

/// <summary>A limit of the site that a day passes.</summary>
/// <param name="Group">For whom; null for everybody.</param>
/// <param name="Limit">The limit in SI.</param>
public readonly record struct PassedLimit(CrosswindGroup? Group, double Limit);

/// <summary>Whom a limit of crosswind is for.</summary>
public enum CrosswindGroup
{
    /// <summary>Before the first solo, with an instructor.</summary>
    BeforeSolo,

    /// <summary>Solo near the field.</summary>
    LocalSolo,

    /// <summary>Cross-country pilots.</summary>
    CrossCountry,
}
