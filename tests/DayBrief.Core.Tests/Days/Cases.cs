using System.Globalization;
using DayBrief.House;
using DayBrief.Soundings;
using DayBrief.Units;

namespace DayBrief.Days;

/// <summary>Reads the shared published cases.</summary>
internal static class Cases
{
    /// <summary>An ascent of the pairs: heights are those of the ascent itself.</summary>
    public static Sounding Pair(string site, string id, double elevationM, DateTimeOffset validAt)
    {
        var table = CaseTable.Read(Repository.Shared("cases", "pairs", site, $"{id}_morning.csv"));
        return Ascent(id, elevationM, validAt, Enumerable.Range(0, table.Count).Select(row => new SoundingLevel
        {
            Pressure = Pressure.FromHectopascals(table.Number(row, "p_hPa")!.Value),
            Temperature = Celsius(table.Number(row, "T_C")),
            DewPoint = Celsius(table.Number(row, "Td_C")),
            Wind = WindOf(table.Number(row, "wind_dir_deg"), table.Number(row, "wind_speed_ms")),
        }));
    }

    public static Sounding Ascent(string name, double elevationM, DateTimeOffset validAt, IEnumerable<SoundingLevel> levels) => new()
    {
        Source = new() { Name = name, Format = "case", Elevation = Altitude.FromMetres(elevationM), ValidAt = validAt },
        Levels = [.. levels],
    };

    public static Temperature? Celsius(double? value) => value is { } known ? Temperature.FromCelsius(known) : null;

    public static TimeZoneInfo Zone(double hours) =>
        TimeZoneInfo.CreateCustomTimeZone($"UTC{hours}", TimeSpan.FromHours(hours), "zone", "zone");

    public static DateTimeOffset Utc(string text) =>
        DateTimeOffset.Parse(text, CultureInfo.InvariantCulture, DateTimeStyles.AssumeUniversal);

    private static Wind? WindOf(double? degrees, double? ms) =>
        degrees is { } from && ms is { } speed ? Wind.From(from % 360, Speed.FromMetresPerSecond(speed)) : null;
}
