using System.Globalization;
using System.Text;

namespace DayBrief.Soundings.Formats.Csv;

/// <summary>One ascent in 500 spellings, chosen by a seeded draw: names, units, order, delimiter, decimal sign, quotes,
/// line ends, encoding. All must give the same levels. Factors [SI].</summary>
public sealed class CsvSpellingTests
{
    private static readonly (string[] Headers, Func<double, double> FromBase)[] Pressure =
    [
        (["pressure_hpa", "Pressure [hPa]", "p (mb)", "PRES_hPa", "pressureHpa", "Luftdruck [hPa]"], p => p),
        (["pressure_pa", "Pressure (Pa)"], p => 100 * p),
        (["p_kPa"], p => p / 10),
    ];

    private static readonly (string[] Headers, Func<double, double> FromBase)[] Height =
    [
        (["height_m", "HGHT [m]", "altitude (m)", "z_m", "heightM", "Höhe [m]", "geopotential_height_gpm"], z => z),
        (["height_ft", "Altitude [ft]"], z => z / 0.3048),
        (["alt_km"], z => z / 1000),
    ];

    private static readonly (string[] Headers, Func<double, double> FromBase)[] Temperature =
    [
        (["temperature_c", "T [°C]", "temp (degC)", "temperatureC", "air_temperature_celsius"], t => t),
        (["temperature_k", "T (K)", "Temp [Kelvin]"], t => t + 273.15),
        (["temp_f", "T [°F]"], t => (1.8 * t) + 32),
    ];

    private static readonly (string[] Headers, Func<double, double> FromBase)[] Speed =
    [
        (["wind_speed_ms", "ff [m/s]", "wspd (m s-1)"], v => v),
        (["wind_speed_kt", "Wind speed (knots)", "windSpeedKt", "sknt"], v => v * 3600 / 1852),
        (["wind_speed_kmh", "ws [km/h]"], v => v * 3.6),
    ];

    private static readonly (double P, double Z, double T, double V)[] Levels =
    [
        (1000, 100, 15.5, 3), (950, 540, 12.25, 5), (900, 990, 8.5, 7.5), (850, 1460, 5, 8), (700, 3010, -4, 12), (500, 5570, -20.5, 25),
    ];

    [Fact]
    public void Five_hundred_spellings_are_one_ascent()
    {
        var random = new Random(20261125);
        for (var round = 0; round < 500; round++)
        {
            var text = Spelled(random);
            var sounding = SoundingReader.Read(random.Next(2) == 0 ? Encoding.UTF8.GetBytes(text) : Encoding.Latin1.GetBytes(text));
            Assert.Equal(Levels.Length, sounding.Levels.Length);
            foreach (var (expected, level) in Levels.Zip(sounding.Levels))
            {
                // Eight figures are written.
                Assert.Equal(expected.P, level.Pressure.Hectopascals, tolerance: 1e-4);
                Assert.Equal(expected.Z, level.Height!.Value.Metres, tolerance: 1e-3);
                Assert.Equal(expected.T, level.Temperature!.Value.Celsius, tolerance: 1e-4);
                Assert.Equal((expected.V, 245), (Math.Round(level.Wind!.Value.Speed.MetresPerSecond, 4), level.Wind!.Value.FromDegrees));
            }
        }
    }

    private static string Spelled(Random random)
    {
        var delimiter = ",;\t"[random.Next(3)];
        var comma = delimiter != ',' && random.Next(2) == 0;
        var columns = new List<(string Header, Func<(double P, double Z, double T, double V), double?> Value)>
        {
            Column(Pressure, level => level.P, random),
            Column(Height, level => level.Z, random),
            Column(Temperature, level => level.T, random),
            Column(Speed, level => level.V, random),
            (new[] { "wind_dir_deg", "dd", "Wind direction [°]", "drct" }[random.Next(4)], _ => 245),
            ("note", _ => null),
        };
        var order = columns.OrderBy(_ => random.Next()).ToList();
        var lines = new List<string> { string.Join(delimiter, order.Select(column => Quoted(column.Header, delimiter, random))) };
        lines.AddRange(Levels.Select(level => string.Join(delimiter, order.Select(column => Number(column.Value(level), comma, delimiter, random)))));
        return string.Join(random.Next(2) == 0 ? "\n" : "\r\n", lines);
    }

    private static (string, Func<(double P, double Z, double T, double V), double?>) Column(
        (string[] Headers, Func<double, double> FromBase)[] spellings, Func<(double P, double Z, double T, double V), double> value, Random random)
    {
        var (headers, fromBase) = spellings[random.Next(spellings.Length)];
        return (headers[random.Next(headers.Length)], level => fromBase(value(level)));
    }

    private static string Number(double? value, bool comma, char delimiter, Random random)
    {
        var text = value?.ToString("0.########", CultureInfo.InvariantCulture) ?? "";
        return Quoted(comma ? text.Replace('.', ',') : text, delimiter, random);
    }

    private static string Quoted(string text, char delimiter, Random random) =>
        text.Contains(delimiter, StringComparison.Ordinal) || random.Next(4) == 0 ? $"\"{text}\"" : text;
}
