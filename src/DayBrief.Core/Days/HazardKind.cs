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
