using System.Text.Json;
using System.Text.RegularExpressions;

namespace DayBrief.Soundings.Formats.Hourly;

/// <summary>What one array of hourly values is.</summary>
internal enum HourlyQuantity
{
    /// <summary>Temperature, °C.</summary>
    Temperature,

    /// <summary>Dew point, °C.</summary>
    DewPoint,

    /// <summary>Relative humidity, %.</summary>
    Humidity,

    /// <summary>Wind speed, m/s.</summary>
    Speed,

    /// <summary>Direction the wind blows from, degrees.</summary>
    Direction,

    /// <summary>Height above the sea, m.</summary>
    Height,

    /// <summary>Pressure at the ground, hPa.</summary>
    SurfacePressure,
}

/// <summary>One array: a variable at a pressure level (NaN: at the ground).</summary>
internal sealed partial record HourlySeries(HourlyQuantity Quantity, double Hpa, double?[] Values)
{
    /// <summary>Null for an array that says nothing about the air in a column.</summary>
    /// <exception cref="InvalidSoundingException">It has not one value an hour, or a unit that is not known.</exception>
    public static HourlySeries? Of(JsonProperty member, JsonElement units, int hours)
    {
        var match = Name().Match(member.Name);
        var ground = member.Name is "surface_pressure" or "surfacePressure" or "pressure_surface";
        if (!ground && (!match.Success || QuantityOf(match.Groups["what"].Value) is null))
            return null;
        if (member.Value.GetArrayLength() != hours)
            throw Refused(member.Name, $"It has {member.Value.GetArrayLength()} values; there are {hours} hours.");
        var quantity = ground ? HourlyQuantity.SurfacePressure : QuantityOf(match.Groups["what"].Value)!.Value;
        var hpa = !ground && match.Groups["unit"].Value is "m" or "" ? double.NaN : ground ? double.NaN : double.Parse(match.Groups["level"].Value, System.Globalization.CultureInfo.InvariantCulture);
        var unit = units.ValueKind == JsonValueKind.Object && units.TryGetProperty(member.Name, out var told) ? told.GetString() : null;
        var raw = member.Value.EnumerateArray().Select(value => value.ValueKind == JsonValueKind.Number ? value.GetDouble() : (double?)null).ToArray();
        var convert = Unit(member.Name, quantity, unit, raw);
        return new(quantity, hpa, [.. raw.Select(value => value is { } known ? convert(known) : (double?)null)]);
    }

    private static HourlyQuantity? QuantityOf(string what) => what.Replace("_", "", StringComparison.Ordinal).ToUpperInvariant() switch
    {
        "TEMPERATURE" or "TEMP" or "T" => HourlyQuantity.Temperature,
        "DEWPOINT" or "DEWPOINTTEMPERATURE" or "TD" => HourlyQuantity.DewPoint,
        "RELATIVEHUMIDITY" or "RH" or "HUMIDITY" => HourlyQuantity.Humidity,
        "WINDSPEED" or "SPEED" => HourlyQuantity.Speed,
        "WINDDIRECTION" or "DIRECTION" => HourlyQuantity.Direction,
        "GEOPOTENTIALHEIGHT" or "HEIGHT" => HourlyQuantity.Height,
        _ => null,
    };

    /// <summary>The unit told, or the one that the values speak for.</summary>
    private static Func<double, double> Unit(string name, HourlyQuantity quantity, string? unit, double?[] raw) => (quantity, unit?.Trim().ToUpperInvariant()) switch
    {
        (HourlyQuantity.Temperature or HourlyQuantity.DewPoint, "K" or "KELVIN") => value => value - 273.15,
        (HourlyQuantity.Temperature or HourlyQuantity.DewPoint, "°F" or "F") => value => (value - 32) / 1.8,
        (HourlyQuantity.Temperature or HourlyQuantity.DewPoint, null) when raw.Min() > 150 => value => value - 273.15,
        (HourlyQuantity.Temperature or HourlyQuantity.DewPoint, null or "°C" or "C" or "CELSIUS") => value => value,
        (HourlyQuantity.Speed, "KM/H" or "KMH") => value => value / 3.6,
        (HourlyQuantity.Speed, "KN" or "KT" or "KNOTS") => value => value * 1852 / 3600,
        (HourlyQuantity.Speed, "MPH" or "MP/H") => value => value * 0.44704,
        (HourlyQuantity.Speed, null or "M/S" or "MS") => value => value,
        (HourlyQuantity.SurfacePressure, "PA") => value => value / 100,
        (HourlyQuantity.SurfacePressure, null) when raw.Min() > 20000 => value => value / 100,
        (HourlyQuantity.SurfacePressure, null or "HPA" or "MB") => value => value,
        (HourlyQuantity.Humidity, null or "%") => value => value,
        (HourlyQuantity.Direction, null or "°" or "DEGREES" or "DEG") => value => value,
        (HourlyQuantity.Height, null or "M" or "METRES") => value => value,
        _ => throw Refused(name, $"The unit \"{unit}\" is not known here."),
    };

    private static InvalidSoundingException Refused(string field, Texts.Words words) =>
        new(new Refusal("hourly-invalid", words) { Field = field });

    [GeneratedRegex("^(?<what>[A-Za-z_]+?)_?(?<level>[0-9]{1,4})_?(?<unit>hPa|hpa|mb|m|)$")]
    private static partial Regex Name();
}
