using System.Globalization;

namespace DayBrief.Soundings.Formats.Csv;

/// <summary>The "# key: value" lines before a header.</summary>
internal sealed class CsvComments
{
    private readonly Dictionary<string, (string Value, int Line)> _values = [];

    public void Add(string line, int number)
    {
        var parts = line.TrimStart('#', ' ', '\t', '"').Split([':', '='], 2);
        if (parts.Length == 2)
        {
            var key = parts[0].Trim().ToLowerInvariant().Replace(' ', '_').Replace('-', '_');
            _values.TryAdd(key, (parts[1].Trim().TrimEnd('"', ';', ',', '\t', ' '), number));
        }
    }

    public void Describe(ReadAscent ascent)
    {
        ascent.Source = ascent.Source with
        {
            Name = Text("name"),
            Station = Text("station") ?? Text("wmo") ?? Text("station_id"),
            ValidAt = Time("valid") ?? Time("valid_at") ?? Time("time"),
            Position = SourceFacts.Position(Number("latitude") ?? Number("lat"), Number("longitude") ?? Number("lon"), At("latitude", "lat")),
            Elevation = SourceFacts.Elevation(Number("elevation_m") ?? (Number("elevation_ft") * 0.3048), At("elevation_m", "elevation_ft")),
        };
        ascent.SurfacePressureHpa = SourceFacts.GroundPressure(
            Number("surface_pressure_hpa") ?? Number("qfe_hpa"), At("surface_pressure_hpa", "qfe_hpa"));
        ascent.QnhHpa = SourceFacts.GroundPressure(Number("qnh_hpa"), At("qnh_hpa", "qnh_hpa"));
    }

    private string? Text(string key) => _values.TryGetValue(key, out var entry) && entry.Value.Length > 0 ? entry.Value : null;

    private Origin At(string key, string other) =>
        _values.TryGetValue(key, out var entry) ? new(entry.Line, Field: key)
        : _values.TryGetValue(other, out entry) ? new(entry.Line, Field: other)
        : default;

    private double? Number(string key) => Text(key) is not { } text ? null
        : double.TryParse(text, NumberStyles.Float, CultureInfo.InvariantCulture, out var value) && double.IsFinite(value) ? value
        : throw At(key, key).Refuse("value-not-a-number", $"\"{text}\" is not a number.");

    private DateTimeOffset? Time(string key) => Text(key) is not { } text ? null
        : Timestamp.Parse(text) ?? throw At(key, key).Refuse(
            "time-invalid", $"\"{text}\" is not a time with its zone, such as 2026-06-21T06:00Z.");
}
