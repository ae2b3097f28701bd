using System.Text.RegularExpressions;

namespace DayBrief.Service.Infrastructure;

/// <summary>From where to where a number may lie that comes from outside, both ends counted in.</summary>
/// <param name="Field">Its path as the outside contract names it, without positions in lists; the end of a path holds for all that end so.</param>
/// <param name="Least">Least.</param>
/// <param name="Most">Greatest.</param>
internal sealed partial record InputRange(string Field, double Least, double Most)
{
    /// <summary>The one table: a number without a row here cannot be read by <see cref="FieldErrors"/>. Reasons where one is not
    /// plain: the heights of launch sites on earth, the pressures of stations, what a compass and a clock can show; beyond them
    /// somebody has mistyped (common practice, no source).</summary>
    public static IReadOnlyList<InputRange> All { get; } =
    [
        new("latitude", -90, 90),
        new("longitude", -180, 180),
        new("elevationM", -500, 6000),
        new("magneticVariationDeg", -180, 180),
        new("usableDepthM", 100, 5000),
        new("usableClimbMs", 0, 5),
        new("headingDeg", 0, 360),
        new("headingMagneticDeg", 0, 360),
        new("limits.windKt", 0, 100),
        new("limits.gustKt", 0, 100),
        new("limits.crosswindKt", 0, 100),
        new("limits.ceilingM", -500, 20_000),
        new("windLimitKt", 0, 100),
        new("gustLimitKt", 0, 100),
        new("crosswindLimitKt", 0, 100),
        new("leastVisibilityM", 0, 50_000),
        new("leastCeilingM", 0, 5000),
        new("leastCirclingHeightM", 100, 3000),
        new("steepestBankDeg", 15, 60),
        new("lowStallMarginPct", 15, 60),
        new("lowBelowM", 100, 3000),
        new("sinkingPerS", -1e-4, 1e-4),
        new("coolingKPerH", -3, 3),
        new("entrainment", 0, 1),
        new("automation.soundingHourUtc", 0, 23),
        new("automation.reportsEveryMinutes", 5, 240),
        new("automation.reportElevationM", -500, 6000),
        new("maxTemperatureC", -40, 60),
        new("mixedTemperatureC", -40, 60),
        new("cloudOktas", 0, 8),
        new("oktas", 0, 8),
        new("directionDeg", 0, 360),
        new("speedKt", 0, 100),
        new("gustKt", 0, 150),
        new("qnhHpa", 850, 1100),
        new("ensemble", 0, 10_000),
        new("triggerTemperatureC", -40, 60),
        new("usableTopAglM", 0, 10_000),
        new("climbMs", 0, 20),
        new("ascentIndex", 0, 20_000),
        new("ascentLatitude", -90, 90),
        new("ascentLongitude", -180, 180),
        new("ascentElevationM", -500, 6000),
        new("coreUpdraftMs", 0.1, 20),
        new("radiusM", 10, 2000),
        new("depthM", 100, 10_000),
        new("lifetimeMin", 1, 600),
        new("windShearMsPerKm", -30, 30),
        new("surfaceTemperature", -90, 70),
        new("elevation", -500, 6000),
    ];

    private static readonly IReadOnlyDictionary<string, InputRange> ByField = All.ToDictionary(range => range.Field);

    /// <summary>The range of a field by its path: the longest end of it that has a row, else what stands before its end.</summary>
    /// <exception cref="KeyNotFoundException">The table has none: a row is missing.</exception>
    public static InputRange Of(string path) => Find(path) ?? throw new KeyNotFoundException($"No range stands for {path}.");

    /// <summary>The same; null for what is no number of the table.</summary>
    public static InputRange? Find(string path)
    {
        var parts = Position().Replace(path, "").Split('.');
        var stretches =
            from dropped in Enumerable.Range(0, parts.Length)
            from start in Enumerable.Range(0, parts.Length - dropped)
            select string.Join('.', parts[start..^dropped]);
        return stretches.Select(ByField.GetValueOrDefault).OfType<InputRange>().FirstOrDefault();
    }

    [GeneratedRegex(@"\[\d+\]")]
    private static partial Regex Position();
}
