using System.Globalization;
using System.Text.Json;
using DayBrief.Texts;

namespace DayBrief.Soundings.Formats.Typed;

/// <summary>The fields of one JSON object; names without regard to case, refusals with the path of the field.</summary>
internal sealed class JsonFields
{
    private readonly Dictionary<string, JsonElement> _values = new(StringComparer.OrdinalIgnoreCase);
    private readonly string _path;

    public JsonFields(JsonElement element, string path)
    {
        _path = path;
        if (element.ValueKind == JsonValueKind.Object)
        {
            foreach (var property in element.EnumerateObject())
            {
                _values[property.Name] = property.Value;
            }
        }
        else if (path.Length > 0)
        {
            throw Refuse("", $"an object such as {{\"pressureHpa\":850,\"temperatureC\":6.0}} is expected, not {Shown(element)}.");
        }
    }

    public JsonFields(IEnumerable<KeyValuePair<string, JsonElement>> values, string path)
    {
        _path = path;
        foreach (var (name, value) in values)
        {
            _values[name] = value;
        }
    }

    public IEnumerable<string> Unknown(string[] known) =>
        _values.Keys.Where(name => !known.Contains(name, StringComparer.OrdinalIgnoreCase));

    public JsonFields? Object(string name) =>
        _values.TryGetValue(name, out var value) && value.ValueKind == JsonValueKind.Object ? new(value, $"{_path}{name}.") : null;

    public JsonElement? Array(string name) =>
        _values.TryGetValue(name, out var value) && value.ValueKind == JsonValueKind.Array ? value : null;

    public string? Text(string name) => Given(name) is not { } value ? null : value.ValueKind switch
    {
        JsonValueKind.String => value.GetString(),
        JsonValueKind.Number => value.GetRawText(),
        _ => throw Refuse(name, $"a text is expected, not {Shown(value)}."),
    };

    public double? Number(string name) => Given(name) is not { } value ? null
        : value.ValueKind == JsonValueKind.Number && value.TryGetDouble(out var number) && double.IsFinite(number) ? number
        : throw Refuse(name, $"a number is expected, not {Shown(value)}. Leave out what was not measured, or write null.");

    public DateTimeOffset? Time(string name) => Text(name) is not { } text ? null
        : Timestamp.Parse(text) ?? throw Refuse(name, $"\"{text}\" is not a time with its zone, such as 2026-06-21T06:00Z.");

    private JsonElement? Given(string name) =>
        _values.TryGetValue(name, out var value) && value.ValueKind != JsonValueKind.Null ? value : null;

    private InvalidSoundingException Refuse(string name, Words message) =>
        new Origin(Field: (_path + name).TrimEnd('.')).Refuse("field-invalid", message);

    private static string Shown(JsonElement value)
    {
        var raw = value.GetRawText();
        return raw.Length <= 30 ? raw : string.Create(CultureInfo.InvariantCulture, $"{raw[..30]}…");
    }
}
