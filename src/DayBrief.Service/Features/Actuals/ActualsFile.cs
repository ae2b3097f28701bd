using System.Globalization;
using DayBrief.Service.Infrastructure;
using nietras.SeparatedValues;

namespace DayBrief.Service.Features.Actuals;

/// <summary>Reads <c>….actuals.csv</c>: <c>time,top_m,climb_ms,cloud_base_m</c>, heights above the field; cells may be empty, columns but the
/// time may be missing, others are passed over. Times are local unless they carry an offset, as HH:MM or as a whole.</summary>
internal static class ActualsFile
{
    private const string Field = "actuals";

    /// <exception cref="InvalidInputException">Not such a file; names the line.</exception>
    public static IReadOnlyList<Actual> Read(string text, string name, DateOnly date, TimeZoneInfo zone)
    {
        using var rows = Sep.Reader(options => options with { Trim = SepTrim.All, DisableColCountCheck = true }).FromText(text);
        var columns = rows.Header.ColNames;
        if (!columns.Contains("time"))
            throw InvalidInputException.Field(Field, $"{name} has no column time; its header must be time,top_m,climb_ms,cloud_base_m.");
        var found = new List<Actual>();
        foreach (var row in rows)
        {
            var line = row.LineNumberFrom;
            string Cell(SepReader.Row cells, string column) => columns.Contains(column) ? cells[column].ToString() : "";
            found.Add(new()
            {
                At = Time(row["time"].ToString(), date, zone, line),
                TopM = Number(Cell(row, "top_m"), "top_m", Actual.HighestM, line),
                ClimbMs = Number(Cell(row, "climb_ms"), "climb_ms", Actual.StrongestMs, line),
                CloudBaseM = Number(Cell(row, "cloud_base_m"), "cloud_base_m", Actual.HighestM, line),
            });
        }

        return found;
    }

    private static double? Number(string text, string column, double most, int line)
    {
        if (text.Length == 0)
            return null;
        return double.TryParse(text, NumberStyles.Float, CultureInfo.InvariantCulture, out var value) && value >= 0 && value <= most
            ? value
            : throw new InvalidInputException(new ProblemError($"\"{text}\" is not a number from 0 to {most}.", Line: line, Field: column));
    }

    private static DateTimeOffset Time(string text, DateOnly date, TimeZoneInfo zone, int line) =>
        Time(text, date, zone) ?? throw new InvalidInputException(new ProblemError($"\"{text}\" is not a time of day; write it as 13:30.", Line: line, Field: "time"));

    /// <summary>A time of day, or a whole time with or without its offset; null for anything else.</summary>
    internal static DateTimeOffset? Time(string text, DateOnly date, TimeZoneInfo zone)
    {
        if (TimeOnly.TryParseExact(text, ["H:mm", "HH:mm", "HH:mm:ss"], CultureInfo.InvariantCulture, DateTimeStyles.None, out var time))
            return LocalClock.InstantOf(date, time, zone);
        if (DateTime.TryParse(text, CultureInfo.InvariantCulture, DateTimeStyles.RoundtripKind, out var whole))
        {
            return whole.Kind == DateTimeKind.Unspecified
                ? LocalClock.InstantOf(DateOnly.FromDateTime(whole), TimeOnly.FromDateTime(whole), zone)
                : DateTimeOffset.Parse(text, CultureInfo.InvariantCulture);
        }

        return null;
    }
}
