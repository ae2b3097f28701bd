namespace DayBrief.Service.Features.Briefs;

/// <summary>What the instructor assumes of the day, as the outside contract names it. Null is not known.</summary>
public sealed record AssumptionsJson
{
    /// <summary>Highest screen temperature expected, °C.</summary>
    public double? MaxTemperatureC { get; init; }

    /// <summary>Temperature that the mixed layer itself reaches, brought to the surface, °C (research cases).</summary>
    public double? MixedTemperatureC { get; init; }

    /// <summary>Cloud that is there without convection, oktas.</summary>
    public double? CloudOktas { get; init; }

    /// <summary>Entrainment ratio at the layer's top.</summary>
    public double? Entrainment { get; init; }

    /// <summary>Members of the ensemble.</summary>
    public int? Ensemble { get; init; }

    /// <summary>Seed of the ensemble.</summary>
    public int? Seed { get; init; }
}
