namespace DayBrief.BoundaryLayer;

/// <summary>What mostly covers the ground around the site.</summary>
public enum GroundCover
{
    /// <summary>Meadows and pasture.</summary>
    Grass,

    /// <summary>Arable land with growing crops.</summary>
    Crops,

    /// <summary>Ploughed or harvested fields, stubble.</summary>
    BareSoil,

    /// <summary>Woods.</summary>
    Woodland,

    /// <summary>Houses, roads, industry.</summary>
    Town,

    /// <summary>Dry scrub, steppe, desert.</summary>
    Scrub,

    /// <summary>Bog, reeds, flooded meadows.</summary>
    Marsh,

    /// <summary>Snow.</summary>
    Snow,
}
