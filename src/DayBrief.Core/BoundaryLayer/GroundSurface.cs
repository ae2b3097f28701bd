namespace DayBrief.BoundaryLayer;

/// <summary>What the ground does with the sun: the numbers behind the plain choices of cover and wetness.</summary>
/// <param name="Albedo">Share of the sunlight that is reflected.</param>
/// <param name="GroundShare">Share of the net radiation that goes into the ground.</param>
/// <param name="Moisture">α of [HoltslagUlden1983]: 1 well-watered grass, 0.5 dry.</param>
/// <param name="RoughnessM">Roughness length, m.</param>
/// <remarks>Albedo and roughness: typical summer values of the textbooks [Stull1988] and of public met-processor tables
/// (from memory). Moisture: 1 for wet grass and 0.45 dry are published [HoltslagUlden1983]; what lies between, and the
/// other covers, follow from typical Bowen ratios (grass 0.8, woods 0.3–0.8, towns 2, scrub 4), common practice.</remarks>
public readonly record struct GroundSurface(double Albedo, double GroundShare, double Moisture, double RoughnessM)
{
    /// <summary>The numbers of a cover and a wetness.</summary>
    public static GroundSurface Of(GroundCover cover, GroundWetness wetness)
    {
        var usual = cover switch
        {
            GroundCover.Crops => new GroundSurface(0.20, 0.10, 0.80, 0.06),
            GroundCover.BareSoil => new(0.18, 0.15, 0.50, 0.01),
            GroundCover.Woodland => new(0.13, 0.06, 0.65, 0.8),
            GroundCover.Town => new(0.17, 0.25, 0.35, 0.8),
            GroundCover.Scrub => new(0.27, 0.15, 0.25, 0.05),
            GroundCover.Marsh => new(0.15, 0.12, 1.00, 0.05),
            GroundCover.Snow => new(0.75, 0.05, 1.00, 0.002),
            _ => new(0.22, 0.10, 0.75, 0.03),
        };
        return usual with { Moisture = Math.Clamp(usual.Moisture + Added(wetness), 0.1, 1.2) };
    }

    private static double Added(GroundWetness wetness) => wetness switch
    {
        GroundWetness.Dry => -0.25,
        GroundWetness.Wet => 0.2,
        GroundWetness.Soaked => 0.35,
        _ => 0,
    };
}
