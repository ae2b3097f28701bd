using System.Globalization;
using System.Text.Json;
using DayBrief.Units;

namespace DayBrief.Soundings.Formats.Hourly;

/// <summary>Forecast profiles as JSON of one array per variable and level beside an array of hours, such as
/// {"time":["2026-06-21T06:00"],"temperature_850hPa":[8.1]}. docs/formats.md has the names and units.</summary>
public static class HourlyProfiles
{
    private const int MostHours = 500;

    /// <summary>The profiles in order of time; null if the content is no JSON of this kind.</summary>
    /// <param name="content">The bytes of the file.</param>
    /// <param name="name">How to call it in messages.</param>
    /// <param name="ground">Height of the ground, where the JSON does not state its own.</param>
    /// <exception cref="InvalidSoundingException">It is of this kind and cannot be used.</exception>
    public static IReadOnlyList<Sounding>? Read(ReadOnlyMemory<byte> content, string? name, Altitude ground)
    {
        try
        {
            using var document = JsonDocument.Parse(content);
            return Table(document.RootElement) is var (table, units) && table.ValueKind == JsonValueKind.Object
                ? Of(document.RootElement, table, units, name, ground)
                : null;
        }
        catch (JsonException)
        {
            return null;
        }
    }

    /// <summary>The object with the hours: the whole, or one of its members; and the object that states its units.</summary>
    private static (JsonElement Table, JsonElement Units) Table(JsonElement root)
    {
        if (root.ValueKind != JsonValueKind.Object)
            return default;
        if (Hours(root) is not null)
            return (root, root.TryGetProperty("units", out var own) ? own : default);
        foreach (var member in root.EnumerateObject())
        {
            if (member.Value.ValueKind == JsonValueKind.Object && Hours(member.Value) is not null)
                return (member.Value, root.TryGetProperty(member.Name + "_units", out var units) || root.TryGetProperty("units", out units) ? units : default);
        }

        return default;
    }

    private static JsonElement[]? Hours(JsonElement table)
    {
        foreach (var key in new[] { "time", "times", "hours", "validAt" })
        {
            if (table.TryGetProperty(key, out var hours) && hours.ValueKind == JsonValueKind.Array && hours.GetArrayLength() is > 0 and <= MostHours)
                return [.. hours.EnumerateArray()];
        }

        return null;
    }

    private static List<Sounding> Of(JsonElement root, JsonElement table, JsonElement units, string? name, Altitude ground)
    {
        var hours = Hours(table)!;
        var offset = TimeSpan.FromSeconds(root.TryGetProperty("utc_offset_seconds", out var seconds) && seconds.TryGetDouble(out var east) ? east : 0);
        var series = table.EnumerateObject()
            .Where(member => member.Value.ValueKind == JsonValueKind.Array)
            .Select(member => HourlySeries.Of(member, units, hours.Length)).OfType<HourlySeries>().ToArray();
        var elevation = root.TryGetProperty("elevation", out var height) && height.TryGetDouble(out var metres) ? Altitude.FromMetres(metres) : ground;
        var soundings = new List<Sounding>();
        for (var i = 0; i < hours.Length; i++)
        {
            if (HourlyLevels.Of(series, i, elevation.Metres) is { Count: >= 3 } levels)
                soundings.Add(new()
                {
                    Source = new() { Name = name, Format = "hourly profiles", Elevation = elevation, ValidAt = Time(hours[i], offset, i) },
                    Levels = [.. levels],
                });
        }

        return soundings.Count > 0
            ? soundings
            : throw new InvalidSoundingException(new Refusal(
                "no-profile", $"There are hours, but at none of them three levels with a temperature. Give arrays such as \"temperature_850hPa\"."));
    }

    private static DateTimeOffset Time(JsonElement hour, TimeSpan offset, int i)
    {
        if (hour.ValueKind == JsonValueKind.Number && hour.TryGetInt64(out var seconds))
            return DateTimeOffset.FromUnixTimeSeconds(seconds);
        if (hour.ValueKind == JsonValueKind.String
            && DateTimeOffset.TryParse(hour.GetString(), CultureInfo.InvariantCulture, DateTimeStyles.AssumeUniversal, out var time))
        {
            return hour.GetString() is { } text && (text.EndsWith('Z') || text.LastIndexOfAny(['+', '-']) > 10) ? time : time - offset;
        }

        throw new InvalidSoundingException(new Refusal("hour-invalid", $"Hour {i + 1} is no time such as 2026-06-21T06:00Z.") { Field = "time" });
    }
}
