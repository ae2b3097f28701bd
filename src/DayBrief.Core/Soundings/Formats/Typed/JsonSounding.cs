using System.Text.Json;
using System.Text.RegularExpressions;

namespace DayBrief.Soundings.Formats.Typed;

/// <summary>Typed levels as JSON, and the "levels" of our own analyses.</summary>
internal static partial class JsonSounding
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

    private static List<ReadAscent> Read(string text)
    {
        using var document = Parse(text);
        return JsonTable.Read(document.RootElement)
            ?? [.. JsonProfiles.Of(document.RootElement).Select(profile => Ascent(profile.Root, profile.Shared, profile.Path))];
    }

    private static ReadAscent Ascent(JsonElement root, JsonFields? shared, string path)
    {
        var typed = Typed(root, shared, path, out var ignored);
        var ascent = TypedLevels.Read(typed, path);
        ascent.Source = ascent.Source with { Format = FormatName };
        ascent.IsForecast = path.Length > 0;
        if (ignored.Count > 0)
        {
            var (names, known) = (string.Join(", ", ignored), string.Join(", ", JsonLevel.Names));
            if (typed.Levels.All(level => level.TemperatureC is null))
            {
                throw new Origin(Field: $"{path}levels[0].{ignored[0]}").Refuse("field-unknown", $"no level has a temperatureC, and these names are not known here: {names}. Known are {known}.");
            }

            ascent.Warn("fields-ignored", $"Not used, because the name is not known here: {names}. Known are {known}.");
        }

        return ascent;
    }

    private static JsonDocument Parse(string text)
    {
        try
        {
            // NaN is no JSON, but programs write it.
            var plain = text.Contains("NaN", StringComparison.Ordinal) ? NotANumber().Replace(text, "null") : text;
            return JsonDocument.Parse(ObjectPerLine().IsMatch(plain) ? $"[{ObjectEnd().Replace(plain.Trim(), "},\n{")}]" : plain, Lenient);
        }
        catch (JsonException error)
        {
            throw new Origin(Line: (int)(error.LineNumber ?? 0) + 1).Refuse(
                "json-invalid", $"this is not valid JSON at character {(error.BytePositionInLine ?? 0) + 1}. A comma, a bracket or a quotation mark may be missing before it.");
        }
    }

    [GeneratedRegex(@"(?<=[:\[,]\s{0,20})-?NaN(?=\s{0,20}[,\]}])")]
    private static partial Regex NotANumber();

    /// <summary>A level a line, without the list around them.</summary>
    [GeneratedRegex(@"^\s*\{[^{}\[\]]{2,2000}\}[ \t]*\r?\n\s*\{[^{}\[\]]{2,2000}\}[ \t]*(?:\r?\n|$)")]
    private static partial Regex ObjectPerLine();

    [GeneratedRegex(@"\}[ \t]*\r?\n\s*\{")]
    private static partial Regex ObjectEnd();

    private static TypedSounding Typed(JsonElement root, JsonFields? shared, string path, out List<string> ignored)
    {
        var fields = new JsonFields(root, path);
        var entries = JsonProfiles.Levels(root, fields, path);
        ignored = [.. entries.SelectMany(entry => entry.Unknown([.. JsonLevel.Names, .. JsonLevel.Derived])).Distinct().Take(10)];
        return new()
        {
            Name = Fact(facts => facts.Text("name")),
            Station = Fact(facts => facts.Text("station")),
            ValidAt = Fact(facts => facts.Time("validAt") ?? facts.Time("time")),
            Latitude = Fact(facts => facts.Number("latitude")),
            Longitude = Fact(facts => facts.Number("longitude")),
            ElevationM = Fact(facts => facts.Number("elevationM")) ?? fields.Object("surface")?.Number("heightM"),
            SurfacePressureHpa = Fact(facts => facts.Number("surfacePressureHpa") ?? facts.Number("qfeHpa")),
            QnhHpa = Fact(facts => facts.Number("qnhHpa")),
            Levels = [.. entries.Select(JsonLevel.Read)],
        };

        T? Fact<T>(Func<JsonFields, T?> of)
        {
            var source = fields.Object("source");
            var own = source is null ? default : of(source);
            own ??= root.ValueKind == JsonValueKind.Object ? of(fields) : default;
            return own is null && shared is not null ? of(shared) : own;
        }
    }
}
