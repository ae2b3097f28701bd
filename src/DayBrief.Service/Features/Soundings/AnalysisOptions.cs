using System.Globalization;
using DayBrief.Service.Infrastructure;
using DayBrief.Soundings;
using DayBrief.Units;

namespace DayBrief.Service.Features.Soundings;

/// <summary>What may be asked of an analysis besides the ascent itself.</summary>
internal sealed record AnalysisOptions(IReadOnlyList<Temperature> SurfaceTemperatures, Altitude? Elevation)
{
    public SoundingAnalysis Analyse(Sounding sounding) =>
        SoundingAnalysis.Of(sounding, SurfaceTemperatures, Elevation);

    /// <summary>From the query: <c>surfaceTemperature</c> (°C, repeatable) and <c>elevation</c> (m).</summary>
    public static AnalysisOptions Of(IQueryCollection query) => new(
        [.. query["surfaceTemperature"].Select(text => Temperature.FromCelsius(Number("surfaceTemperature", text)))],
        query["elevation"].FirstOrDefault() is { } metres ? Altitude.FromMetres(Number("elevation", metres)) : null);

    private static double Number(string field, string? text) => Number(field, text, InputRange.Of(field).Least, InputRange.Of(field).Most);

    private static double Number(string field, string? text, double min, double max) =>
        double.TryParse(text, NumberStyles.Float, CultureInfo.InvariantCulture, out var value) && value >= min && value <= max
            ? value
            : throw InvalidInputException.Field(field, $"Needs a number from {min} to {max}; it is {text}.");
}
