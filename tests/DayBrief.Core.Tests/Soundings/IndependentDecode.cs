using System.Globalization;
using DayBrief.House;

namespace DayBrief.Soundings;

/// <summary>The levels of a real ascent as another decoder gives them (shared/soundings/csv; its README and index.json
/// name the decoder of each), split here without our own CSV reader.</summary>
internal static class IndependentDecode
{
    public sealed record Row(double PressureHpa, double? HeightM, double? TemperatureC, double? DewPointC, double? FromDeg, double? SpeedKt);

    public static string CsvPath(string id) => Repository.Shared("soundings", "csv", id + ".csv");

    public static Row[] Rows(string id) =>
    [
        .. File.ReadLines(CsvPath(id)).Skip(1).Select(line =>
        {
            var cells = line.Split(',').Select(cell => cell.Length == 0 ? (double?)null : double.Parse(cell, CultureInfo.InvariantCulture)).ToArray();
            return new Row(cells[0]!.Value, cells[1], cells[2], cells[3], cells[4], cells[5]);
        }),
    ];

    public static Sounding ReadOriginal(string file) =>
        SoundingReader.Read(File.ReadAllBytes(Repository.Shared("soundings", "original", file)), file);

    public static Sounding ReadCsv(string id) => SoundingReader.Read(File.ReadAllBytes(CsvPath(id)), id);

    /// <summary>Every row, every value. The decode is rounded to two decimals, so half of the last is allowed.</summary>
    public static void AssertEqual(Row[] expected, Sounding actual, double tolerance = 0.005 + 1e-9)
    {
        Assert.Equal(expected.Length, actual.Levels.Length);
        for (var i = 0; i < expected.Length; i++)
        {
            var (row, level) = (expected[i], actual.Levels[i]);
            Same(row.PressureHpa, level.Pressure.Hectopascals, "pressure", row, tolerance);
            Same(row.HeightM, level.Height?.Metres, "height", row, tolerance);
            Same(row.TemperatureC, level.Temperature?.Celsius, "temperature", row, tolerance);
            Same(row.DewPointC, level.DewPoint?.Celsius, "dew point", row, tolerance);
            Same(row.FromDeg, level.Wind?.FromDegrees, "wind direction", row, tolerance);

            // The other decoder takes the knot as 0.514444 m/s, a millionth short: 0.0001 kt more at 100 kt.
            Same(row.SpeedKt, level.Wind?.Speed.Knots, "wind speed", row, tolerance + 0.0002);
        }
    }

    private static void Same(double? expected, double? actual, string what, Row row, double tolerance) =>
        Assert.True(
            expected is null == actual is null && Math.Abs((expected - actual) ?? 0) <= tolerance,
            $"{what} at {row.PressureHpa} hPa: {expected} expected, {actual} read");
}
