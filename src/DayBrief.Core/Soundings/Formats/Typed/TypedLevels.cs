using DayBrief.Units;

namespace DayBrief.Soundings.Formats.Typed;

/// <summary>Takes typed levels into the reading pipeline.</summary>
internal static class TypedLevels
{
    public const string FormatName = "Typed levels";

    /// <param name="typed">The ascent.</param>
    /// <param name="path">Where its fields stand, such as "profiles[1].".</param>
    public static ReadAscent Read(TypedSounding typed, string path = "")
    {
        var ascent = new ReadAscent
        {
            Source = new()
            {
                Format = FormatName,
                Name = typed.Name,
                Station = typed.Station,
                ValidAt = typed.ValidAt,
                Position = SourceFacts.Position(typed.Latitude, typed.Longitude, new(Field: path + "latitude")),
                Elevation = SourceFacts.Elevation(typed.ElevationM, new(Field: path + "elevationM")),
            },
            SurfacePressureHpa = SourceFacts.GroundPressure(typed.SurfacePressureHpa, new(Field: path + "surfacePressureHpa")),
            QnhHpa = SourceFacts.GroundPressure(typed.QnhHpa, new(Field: path + "qnhHpa")),
        };
        for (var i = 0; i < typed.Levels.Count; i++)
        {
            ascent.Add(typed.Levels[i] is { } level
                ? Level(level, $"{path}levels[{i}]")
                : throw new Origin(Field: $"{path}levels[{i}]").Refuse("field-invalid", "the level is missing."));
        }

        return ascent;
    }

    private static ReadLevel Level(TypedLevel level, string path) => new(new Origin(Field: path))
    {
        PressureHpa = level.PressureHpa,
        HeightM = level.HeightM,
        TemperatureC = level.TemperatureC,
        DewPointC = level.DewPointC ?? (level.TemperatureC - level.DewPointDepressionC)
            ?? Moisture.FromRelative(level.TemperatureC, level.RelativeHumidityPct, new(Field: $"{path}.relativeHumidityPct")),
        WindFromDeg = level.WindDirectionDeg,
        WindMs = level.WindSpeedMs is { } ms && level.WindSpeedKt is null ? ms : level.WindSpeedKt * Speed.MetresPerSecondPerKnot,
        FieldName = name => $"{path}.{Given(level, name)}",
    };

    private static string Given(TypedLevel level, string name) => name switch
    {
        "dewPointC" when level.DewPointC is null && level.DewPointDepressionC is null && level.RelativeHumidityPct is not null => "relativeHumidityPct",
        "dewPointC" when level.DewPointC is null => "dewPointDepressionC",
        "windSpeedKt" when level.WindSpeedKt is null && level.WindSpeedMs is not null => "windSpeedMs",
        _ => name,
    };
}
