namespace DayBrief.Soundings.Formats.Csv;

/// <summary>What a column holds.</summary>
internal enum CsvQuantity
{
    Pressure,
    Height,
    HeightAboveGround,
    Temperature,
    DewPoint,
    DewPointDepression,
    RelativeHumidity,
    SpecificHumidity,
    MixingRatio,
    WindDirection,
    WindSpeed,
    WindEastward,
    WindNorthward,
    Time,
    Date,
    Latitude,
    Longitude,

    /// <summary>Where the balloon moves to: the opposite of where the wind comes from.</summary>
    MovingDirection,
    MovingSpeed,
}
