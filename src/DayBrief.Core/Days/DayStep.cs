namespace DayBrief.Days;

/// <summary>The day at one time. Null is what physics or the data cannot answer: no heating, no moisture, no cloud.</summary>
public sealed record DayStep
{
    /// <summary>Local time.</summary>
    public required DateTimeOffset Time { get; init; }

    /// <summary>Screen temperature, °C.</summary>
    public double? SurfaceTemperatureC { get; init; }

    /// <summary>Sensible heat flux at the ground, W/m², upwards positive.</summary>
    public double? SensibleHeatWm2 { get; init; }

    /// <summary>Latent heat flux at the ground, W/m².</summary>
    public double? LatentHeatWm2 { get; init; }

    /// <summary>Depth of the stirred layer, m above ground.</summary>
    public double? MixedLayerDepthM { get; init; }

    /// <summary>Its potential temperature, K (1000 hPa).</summary>
    public double? MixedLayerThetaK { get; init; }

    /// <summary>Its mixing ratio, g/kg.</summary>
    public double? MixedLayerMixingRatioGkg { get; init; }

    /// <summary>w*, m/s.</summary>
    public double? ConvectiveVelocityScaleMs { get; init; }

    /// <summary>LCL of the stirred air, m above ground, whether thermals reach it or not.</summary>
    public double? CondensationLevelAglM { get; init; }

    /// <summary>Base of the cumulus, m above ground.</summary>
    public double? CloudBaseAglM { get; init; }

    /// <summary>Top of the cumulus, m above ground.</summary>
    public double? CloudTopAglM { get; init; }

    /// <summary>Cover by cumulus and by the cloud assumed, oktas.</summary>
    public double? CloudCoverOktas { get; init; }

    /// <summary>Where thermals end: the layer's top, or the cloud base if lower.</summary>
    public double? ThermalTopAglM { get; init; }

    /// <summary>Where climbs end that are worth taking at this site.</summary>
    public double? UsableTopAglM { get; init; }

    /// <summary>Whether thermals carry so near to the cloud base that the rules' distance from cloud ends the climb: 300 m
    /// (1,000 ft) of height by [SERA5001], outside the airspace near the ground where clear of cloud is enough.</summary>
    public bool CarriesToCloud => CloudBaseAglM - UsableTopAglM <= 300;

    /// <summary>Air in the centre of the average thermal at 0.4 of the depth, m/s.</summary>
    public double? AverageCoreUpdraftMs { get; init; }

    /// <summary>Radius of a picked thermal at 0.4 of the depth, m.</summary>
    public double? PickedRadiusM { get; init; }

    /// <summary>Air in the centre of a picked thermal at its best height, m/s.</summary>
    public double? CoreUpdraftMs { get; init; }

    /// <summary>Climb of a glider there, m/s; 0 when thermals carry no glider.</summary>
    public double? ClimbMs { get; init; }

    /// <summary>Outer radius of the average thermal at 0.4 of the depth, m.</summary>
    public double? ThermalRadiusM { get; init; }

    /// <summary>True direction that the wind at the ground blows from, degrees.</summary>
    public double? SurfaceWindFromDegrees { get; init; }

    /// <summary>Wind at the ground as the layer mixes it down from the ascent's winds, kt.</summary>
    public double? SurfaceWindKt { get; init; }

    /// <summary>Its gusts, kt.</summary>
    public double? GustKt { get; init; }

    /// <summary>Mean distance between thermals met on a straight line, m.</summary>
    public double? SpacingM { get; init; }

    /// <summary>Depth over Obukhov length, −z_i/L: above 25 cells, below that streets become likely.</summary>
    public double? InstabilityRatio { get; init; }
}
