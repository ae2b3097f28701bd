namespace DayBrief.Days;

/// <summary>What can hurt someone, by what it is.</summary>
public enum HazardKind
{
    /// <summary>Thunder is possible.</summary>
    Thunder,

    /// <summary>A report or forecast names cumulonimbus without thunder.</summary>
    Cumulonimbus,

    /// <summary>A report or forecast names a squall.</summary>
    Squall,

    /// <summary>A report or forecast names a funnel cloud, tornado or waterspout.</summary>
    FunnelCloud,

    /// <summary>A report or forecast names hail.</summary>
    Hail,

    /// <summary>A report or forecast names rain or drizzle that freezes.</summary>
    FreezingPrecipitation,

    /// <summary>The ascent holds the energy for thunder, though the computed day does not release it.</summary>
    ThunderInStore,

    /// <summary>Mean wind above the site's own limit, or the usual one where it sets none.</summary>
    WindOverLimit,

    /// <summary>Gusts above the site's own limit, or the usual one where it sets none.</summary>
    GustOverLimit,

    /// <summary>Visibility below the site's least, or the usual one where it sets none.</summary>
    VisibilityBelowLeast,

    /// <summary>Broken or overcast cloud below the site's least, or the usual one where it sets none.</summary>
    CeilingBelowLeast,

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

    /// <summary>Wind that grows fast in the lowest 100 m: gradient on the approach.</summary>
    WindGradient,

    /// <summary>Low cloud base.</summary>
    LowCloud,

    /// <summary>Poor visibility, reported or forecast.</summary>
    PoorVisibility,

    /// <summary>Thermals usable only close to the ground.</summary>
    LowTops,

    /// <summary>Thermals that invite to circle low: low ones, weak ones, or low for long before they grow.</summary>
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
