using System.Globalization;
using DayBrief.Days;
using DayBrief.Service.Infrastructure;
using nietras.SeparatedValues;

namespace DayBrief.Service.Commands;

/// <summary>Reads prescribed fluxes: a header <c>time,sensible_w_m2,latent_w_m2</c>, local ISO times (the site's zone where
/// they carry no offset).</summary>
internal static class FluxFile
{
    private const string Field = "--flux";

    /// <exception cref="InvalidInputException">Not such a file; names the line.</exception>
    public static FluxSeries Read(string path, TimeZoneInfo zone)
    {
        if (!File.Exists(path))
            throw InvalidInputException.Field(Field, $"There is no file {path}.");
        using var rows = Sep.Reader(options => options with { Trim = SepTrim.All }).FromText(File.ReadAllText(path));
        foreach (var column in new[] { "time", "sensible_w_m2", "latent_w_m2" })
        {
            if (!rows.Header.ColNames.Contains(column))
                throw InvalidInputException.Field(Field, $"{path} has no column {column}; its header must be time,sensible_w_m2,latent_w_m2.");
        }

        var points = new List<FluxPoint>();
        foreach (var row in rows)
        {
            points.Add(new(
                Time(row["time"].ToString(), zone, row.LineNumberFrom),
                Number(row["sensible_w_m2"].ToString(), row.LineNumberFrom),
                Number(row["latent_w_m2"].ToString(), row.LineNumberFrom)));
        }

        try
        {
            return new FluxSeries(points);
        }
        catch (ArgumentException bad)
        {
            throw InvalidInputException.Field(Field, bad.Message);
        }
    }

    private static DateTimeOffset Time(string text, TimeZoneInfo zone, int line)
    {
        if (!DateTime.TryParse(text, CultureInfo.InvariantCulture, DateTimeStyles.RoundtripKind, out var time))
            throw At(line, $"\"{text}\" is not an ISO time.");
        return time.Kind == DateTimeKind.Unspecified
            ? new DateTimeOffset(time, zone.GetUtcOffset(time))
            : DateTimeOffset.Parse(text, CultureInfo.InvariantCulture);
    }

    private static double Number(string text, int line) =>
        double.TryParse(text, NumberStyles.Float, CultureInfo.InvariantCulture, out var value) && value is >= -500 and <= 1500
            ? value
            : throw At(line, $"\"{text}\" is not a flux from -500 to 1500 W/m².");

    private static InvalidInputException At(int line, string detail) =>
        new(new ProblemError(detail, Line: line, Field: Field));
}
