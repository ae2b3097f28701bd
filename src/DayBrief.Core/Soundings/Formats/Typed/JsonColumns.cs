using System.Text.Json;

namespace DayBrief.Soundings.Formats.Typed;

/// <summary>A profile as columns: {"pressureHpa":[1000,950],"temperatureC":[15,12]}.</summary>
internal static class JsonColumns
{
    /// <summary>Null if there are no columns of temperature and of pressure or height.</summary>
    public static List<JsonFields>? Levels(JsonFields fields, string path)
    {
        if (fields.Array("temperatureC") is not { } temperatures || (fields.Array("pressureHpa") ?? fields.Array("heightM")) is null)
        {
            return null;
        }

        var length = Math.Min(temperatures.GetArrayLength(), SoundingLimits.Levels + 1);
        var columns = JsonLevel.Names.Select(name => (name, cells: Cells(fields, name, temperatures.GetArrayLength(), path))).Where(column => column.cells is not null).ToArray();
        return [.. Enumerable.Range(0, length).Select(i => new JsonFields(columns.Select(column => KeyValuePair.Create(column.name, column.cells![i])), $"{path}levels[{i}]."))];
    }

    private static JsonElement[]? Cells(JsonFields fields, string name, int length, string path)
    {
        if (fields.Array(name) is not { } column)
        {
            return null;
        }

        return column.GetArrayLength() == length
            ? [.. column.EnumerateArray().Take(SoundingLimits.Levels + 1)]
            : throw new Origin(Field: path + name).Refuse("columns-unequal", $"the column has {column.GetArrayLength()} values, \"temperatureC\" has {length}.");
    }
}
