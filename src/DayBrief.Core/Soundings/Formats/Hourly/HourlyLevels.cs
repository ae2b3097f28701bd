using DayBrief.Units;

namespace DayBrief.Soundings.Formats.Hourly;

/// <summary>The levels of one hour, from the ground up.</summary>
internal static class HourlyLevels
{
    public static List<SoundingLevel> Of(HourlySeries[] series, int hour, double groundM)
    {
        double? At(HourlyQuantity quantity, double hpa) => series
            .FirstOrDefault(each => each.Quantity == quantity && each.Hpa.Equals(hpa))?.Values[hour];
        var pressures = series.Select(each => each.Hpa).Where(double.IsFinite).Distinct().OrderDescending();
        var surface = At(HourlyQuantity.SurfacePressure, double.NaN);
        var levels = new List<SoundingLevel>();
        if (surface is { } hpa && At(HourlyQuantity.Temperature, double.NaN) is not null)
            levels.Add(Level(hpa, double.NaN));
        foreach (var pressure in pressures.Where(pressure => At(HourlyQuantity.Temperature, pressure) is not null))
        {
            var buried = surface is { } ground ? pressure >= ground - 1 : At(HourlyQuantity.Height, pressure) < groundM;
            if (!buried)
                levels.Add(Level(pressure, pressure));
        }

        return levels;

        SoundingLevel Level(double hpa, double key)
        {
            var celsius = At(HourlyQuantity.Temperature, key);
            var dewPoint = At(HourlyQuantity.DewPoint, key)
                ?? Moisture.FromRelative(celsius, At(HourlyQuantity.Humidity, key), new(Field: $"{hpa:0} hPa"));
            return new()
            {
                Pressure = Pressure.FromHectopascals(hpa),
                Height = At(HourlyQuantity.Height, key) is { } metres ? Altitude.FromMetres(metres) : null,
                Temperature = Temperature.FromCelsius(celsius!.Value),
                DewPoint = dewPoint is { } point ? Temperature.FromCelsius(Math.Min(point, celsius.Value)) : null,
                Wind = At(HourlyQuantity.Speed, key) is { } speed && At(HourlyQuantity.Direction, key) is { } from
                    ? Wind.From(((from % 360) + 360) % 360, Speed.FromMetresPerSecond(speed))
                    : null,
            };
        }
    }
}
