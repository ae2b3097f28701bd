namespace DayBrief.Soundings.Formats.Typed;

/// <summary>One entry of "levels".</summary>
internal static class JsonLevel
{
    public static readonly string[] Names =
    [
        "pressureHpa", "heightM", "temperatureC", "dewPointC", "dewPointDepressionC", "relativeHumidityPct",
        "windDirectionDeg", "windSpeedKt", "windSpeedMs",
    ];

    /// <summary>What an analysis adds to its levels, so that an analysis can be read again without a word.</summary>
    public static readonly string[] Derived = ["computedHeightM"];

    public static TypedLevel Read(JsonFields level) => new()
    {
        PressureHpa = level.Number("pressureHpa"),
        HeightM = level.Number("heightM"),
        TemperatureC = level.Number("temperatureC"),
        DewPointC = level.Number("dewPointC"),
        DewPointDepressionC = level.Number("dewPointDepressionC"),
        RelativeHumidityPct = level.Number("relativeHumidityPct"),
        WindDirectionDeg = level.Number("windDirectionDeg"),
        WindSpeedKt = level.Number("windSpeedKt"),
        WindSpeedMs = level.Number("windSpeedMs"),
    };
}
