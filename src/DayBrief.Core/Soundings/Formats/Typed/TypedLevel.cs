namespace DayBrief.Soundings.Formats.Typed;

/// <summary>One level as somebody types it: pressure or height, temperature, dew point or depression, wind in knots or
/// m/s. Null is not reported.</summary>
public sealed record TypedLevel
{
    /// <summary>Pressure, hPa.</summary>
    public double? PressureHpa { get; init; }

    /// <summary>Height above mean sea level, m. Names the level where no pressure is given.</summary>
    public double? HeightM { get; init; }

    /// <summary>Temperature, °C.</summary>
    public double? TemperatureC { get; init; }

    /// <summary>Dew point, °C.</summary>
    public double? DewPointC { get; init; }

    /// <summary>Temperature minus dew point, °C; used where no dew point is given.</summary>
    public double? DewPointDepressionC { get; init; }

    /// <summary>Relative humidity over water, %; used where neither dew point nor depression is given.</summary>
    public double? RelativeHumidityPct { get; init; }

    /// <summary>True direction that the wind blows from, 0 to 360°.</summary>
    public double? WindDirectionDeg { get; init; }

    /// <summary>Wind speed, knots.</summary>
    public double? WindSpeedKt { get; init; }

    /// <summary>Wind speed, m/s; used where none in knots is given.</summary>
    public double? WindSpeedMs { get; init; }
}
