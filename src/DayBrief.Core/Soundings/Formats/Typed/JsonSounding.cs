using System.Text.Json;

namespace DayBrief.Soundings.Formats.Typed;

/// <summary>Typed levels as JSON, and the "levels" of our own analyses.</summary>
internal static class JsonSounding
{
    public const string FormatName = "JSON";

    private static readonly JsonDocumentOptions Lenient = new()
    {
        CommentHandling = JsonCommentHandling.Skip,
        AllowTrailingCommas = true,
        MaxDepth = 16,
    };

    public static SoundingFormat Format { get; } = new(
        new(FormatName, "RFC 8259; field names as in an analysis", "{\"levels\":[{\"pressureHpa\":1000, …"),
        Recognises,
        input => Read(input.Text!));

    private static bool Recognises(SoundingInput input) =>
        input.Text.AsSpan().TrimStart() is ['{', ..] or ['[', ..];

    private static ReadAscent[] Read(string text)
    {
        using var document = Parse(text);
        var typed = Typed(document.RootElement, out var ignored);
        var ascent = TypedLevels.Read(typed);
        ascent.Source = ascent.Source with { Format = FormatName };
        if (ignored.Count > 0)
        {
            ascent.Warn("fields-ignored", $"Not used, because the name is not known here: {string.Join(", ", ignored)}.");
        }

        return [ascent];
    }

    private static JsonDocument Parse(string text)
    {
        try
        {
            return JsonDocument.Parse(text, Lenient);
        }
        catch (JsonException error)
        {
            throw new Origin(Line: (int)(error.LineNumber ?? 0) + 1).Refuse(
                "json-invalid", $"This is not valid JSON: {Reason(error.Message)}");
        }
    }

    private static string Reason(string message) => message.Split(" LineNumber:", 2)[0];

    private static TypedSounding Typed(JsonElement root, out List<string> ignored)
    {
        var fields = new JsonFields(root, "");
        var source = fields.Object("source");
        var levels = root.ValueKind == JsonValueKind.Array
            ? root
            : fields.Array("levels")
                ?? throw new Origin(Field: "levels").Refuse("levels-missing", "The JSON has no array \"levels\".");
        var entries = levels.EnumerateArray().Take(SoundingLimits.Levels + 1)
            .Select((level, i) => new JsonFields(level, $"levels[{i}].")).ToList();
        ignored = [.. entries.SelectMany(entry => entry.Unknown(JsonLevel.Names)).Distinct().Take(10)];
        return new()
        {
            Name = source?.Text("name") ?? fields.Text("name"),
            Station = source?.Text("station") ?? fields.Text("station"),
            ValidAt = source?.Time("validAt") ?? fields.Time("validAt"),
            Latitude = source?.Number("latitude") ?? fields.Number("latitude"),
            Longitude = source?.Number("longitude") ?? fields.Number("longitude"),
            ElevationM = source?.Number("elevationM") ?? fields.Number("elevationM") ?? fields.Object("surface")?.Number("heightM"),
            SurfacePressureHpa = fields.Number("surfacePressureHpa") ?? fields.Number("qfeHpa"),
            QnhHpa = fields.Number("qnhHpa"),
            Levels = [.. entries.Select(JsonLevel.Read)],
        };
    }
}
