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

    /// <summary>Showers are likely.</summary>
    Showers,

    /// <summary>Cumulus grows too tall to soar under.</summary>
    Overdevelopment,

    /// <summary>Cumulus spreads out and takes the sun away.</summary>
    SpreadOut,

    /// <summary>Wind at the ground.</summary>
    SurfaceWind,

    /// <summary>Wind across every runway.</summary>
    Crosswind,

    /// <summary>Wind or shear in the layer that tears thermals.</summary>
    WindAloft,

    /// <summary>A maximum of wind close to the ground: gradient on the approach.</summary>
    WindGradient,

    /// <summary>Low cloud base.</summary>
    LowCloud,

    /// <summary>Thermals usable only close to the ground.</summary>
    LowTops,

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

    /// <summary>The runway or other thing it is about.</summary>
    public string? About { get; init; }
}
