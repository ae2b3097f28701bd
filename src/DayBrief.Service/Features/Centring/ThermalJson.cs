using System.Text.Json;
using DayBrief.Flight.Thermals;
using DayBrief.Service.Infrastructure;
using DayBrief.Units;

namespace DayBrief.Service.Features.Centring;

/// <summary>A thermal as the outside contract names it (THERMAL.json).</summary>
internal sealed record ThermalJson
{
    public double? CoreUpdraftMs { get; init; }

    public double? RadiusM { get; init; }

    public double? DepthM { get; init; }

    public double? HeightM { get; init; }

    /// <summary>Null is lasting.</summary>
    public double? LifetimeMin { get; init; }

    public double? WindShearMsPerKm { get; init; }

    /// <summary><c>picked</c>, the thermal that is circled in, or <c>average</c>; picked if omitted.</summary>
    public string? Kind { get; init; }

    /// <exception cref="InvalidInputException">Not JSON of this shape.</exception>
    public static ThermalJson Parse(string json)
    {
        try
        {
            return JsonSerializer.Deserialize<ThermalJson>(json, Json.Line) ?? throw InvalidInputException.Field("thermal", "The thermal is empty.");
        }
        catch (JsonException bad)
        {
            throw InvalidInputException.Field(bad.Path ?? "thermal", $"This is not JSON as expected, at character {(bad.BytePositionInLine ?? 0) + 1} of line {(bad.LineNumber ?? 0) + 1}.");
        }
    }

    /// <exception cref="InvalidInputException">A figure is missing or out of range; all are named.</exception>
    public Thermal ToThermal()
    {
        var errors = new FieldErrors("thermal");
        var core = errors.Number("coreUpdraftMs", CoreUpdraftMs);
        var radius = errors.Number("radiusM", RadiusM);
        var depth = errors.Number("depthM", DepthM);
        var height = errors.Number("heightM", HeightM, 20, depth);
        var life = errors.Optional("lifetimeMin", LifetimeMin);
        var shear = errors.Number("windShearMsPerKm", WindShearMsPerKm ?? 0);
        var form = errors.OneOf("kind", Kind, ThermalForm.Picked);
        errors.ThrowIfAny();
        return new(
            Speed.FromMetresPerSecond(core),
            radius,
            Height.FromMetres(depth),
            Height.FromMetres(height),
            life is { } minutes ? TimeSpan.FromMinutes(minutes) : null,
            shear,
            form);
    }
}
