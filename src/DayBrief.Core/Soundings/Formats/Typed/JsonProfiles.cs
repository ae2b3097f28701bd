using System.Text.Json;

namespace DayBrief.Soundings.Formats.Typed;

/// <summary>The shapes that JSON comes in: one ascent; "profiles" of several hours; columns instead of levels.</summary>
internal static class JsonProfiles
{
    private const int MostProfiles = 1000;

    /// <summary>Each ascent with the path to it and the object whose facts it shares.</summary>
    public static IEnumerable<(JsonElement Root, JsonFields? Shared, string Path)> Of(JsonElement root)
    {
        var shared = root.ValueKind == JsonValueKind.Object ? new JsonFields(root, "") : null;
        if (shared?.Array("profiles") is { } profiles)
        {
            return profiles.EnumerateArray().Any()
                ? profiles.EnumerateArray().Take(MostProfiles).Select((profile, i) => (profile, (JsonFields?)shared, $"profiles[{i}]."))
                : throw new Origin(Field: "profiles").Refuse("levels-missing", "\"profiles\" is empty.");
        }

        return HoldsAscents(root)
            ? root.EnumerateArray().Take(MostProfiles).Select((profile, i) => (profile, (JsonFields?)null, $"[{i}]."))
            : [(root, null, "")];
    }

    /// <summary>The levels, from "levels", from an array of levels, or from columns of equal length.</summary>
    public static List<JsonFields> Levels(JsonElement root, JsonFields fields, string path)
    {
        if (root.ValueKind == JsonValueKind.Array)
        {
            return Entries(root, path);
        }

        return fields.Array("levels") is { } levels
            ? Entries(levels, path)
            : JsonColumns.Levels(fields, path)
                ?? throw new Origin(Field: path + "levels").Refuse("levels-missing", "the JSON has no array \"levels\".");
    }

    private static List<JsonFields> Entries(JsonElement levels, string path) =>
        [.. levels.EnumerateArray().Take(SoundingLimits.Levels + 1).Select((level, i) => new JsonFields(level, $"{path}levels[{i}]."))];

    private static bool HoldsAscents(JsonElement root) =>
        root.ValueKind == JsonValueKind.Array
        && root.EnumerateArray().Any()
        && root.EnumerateArray().First() is { ValueKind: JsonValueKind.Object } first
        && (first.TryGetProperty("levels", out _) || first.TryGetProperty("temperatureC", out var column) && column.ValueKind == JsonValueKind.Array);
}
