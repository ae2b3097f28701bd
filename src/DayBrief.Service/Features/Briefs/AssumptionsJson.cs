using DayBrief.Days;
using DayBrief.Service.Infrastructure;
using DayBrief.Units;

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

    /// <summary>Cloud by local time; comes before <see cref="CloudOktas"/>.</summary>
    public IReadOnlyList<CloudFromJson>? CloudByHour { get; init; }

    /// <summary>Wind at the ground by local time.</summary>
    public IReadOnlyList<WindFromJson>? WindByHour { get; init; }

    /// <summary>Altimeter setting of the day, hPa.</summary>
    public double? QnhHpa { get; init; }

    /// <summary>Entrainment ratio at the layer's top.</summary>
    public double? Entrainment { get; init; }

    /// <summary>Local time at which the maximum is reached.</summary>
    public TimeOnly? MaximumAt { get; init; }

    /// <summary>Divergence of the air aloft, 1/s: it sinks by this share of its height each second.</summary>
    public double? SinkingPerS { get; init; }

    /// <summary>Cooling of the free air, K/h.</summary>
    public double? CoolingKPerH { get; init; }

    /// <summary>Without the shade and the mass flux of cumulus (research cases).</summary>
    public bool? WithoutCumulus { get; init; }

    /// <summary>Members of the ensemble.</summary>
    public int? Ensemble { get; init; }

    /// <summary>Seed of the ensemble.</summary>
    public int? Seed { get; init; }

    /// <exception cref="InvalidInputException">A value is out of range; all are named.</exception>
    internal DayAssumptions ToAssumptions()
    {
        var errors = new FieldErrors("assumptions");
        var max = errors.Optional("maxTemperatureC", MaxTemperatureC);
        var mixed = errors.Optional("mixedTemperatureC", MixedTemperatureC);
        var defaults = new DayAssumptions();
        var cloud = errors.Number("cloudOktas", CloudOktas ?? 0);
        var clouds = HourlyAssumptions.Cloud(CloudByHour, errors);
        var winds = HourlyAssumptions.Wind(WindByHour, errors);
        var qnh = errors.Optional("qnhHpa", QnhHpa);
        var entrainment = errors.Optional("entrainment", Entrainment);
        var sinking = errors.Optional("sinkingPerS", SinkingPerS);
        var cooling = errors.Optional("coolingKPerH", CoolingKPerH);
        var ensemble = errors.Number("ensemble", Ensemble ?? defaults.EnsembleSize);
        errors.ThrowIfAny();
        return new()
        {
            MaxTemperature = max is { } screen ? Temperature.FromCelsius(screen) : null,
            MixedTemperature = mixed is { } layer ? Temperature.FromCelsius(layer) : null,
            CloudOktas = cloud,
            CloudByHour = [.. clouds],
            WindByHour = [.. winds],
            Qnh = qnh is { } hpa ? Pressure.FromHectopascals(hpa) : null,
            EntrainmentRatio = entrainment,
            MaximumAt = MaximumAt,
            DivergencePerSecond = sinking,
            CoolingKelvinsPerHour = cooling,
            WithoutCumulus = WithoutCumulus ?? false,
            EnsembleSize = (int)ensemble,
            Seed = Seed ?? defaults.Seed,
        };
    }
}
