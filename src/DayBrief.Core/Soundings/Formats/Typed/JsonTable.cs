using System.Text.Json;
using DayBrief.Soundings.Formats.Csv;

namespace DayBrief.Soundings.Formats.Typed;

/// <summary>A JSON list of levels under other names than those of an analysis: names and units as in the header of a table.</summary>
internal static class JsonTable
{
    private static readonly string[] Lists = ["levels", "data", "profile", "sounding", "records", "rows", "observations", "values"];

    /// <summary>Null if the JSON holds no such list.</summary>
    public static List<ReadAscent>? Read(JsonElement root)
    {
        if (Columns(root) is var (columns, values))
        {
            var named = CsvHeader.Read(columns, [], 1, new UnitGuess([.. values.Select(row => row.Cells)], decimalComma: false));
            return CsvRows.Read(named, ',', values, () => Begin(root), i => new(Field: $"[{i}]"));
        }

        if (List(root) is not var (list, path) || list.GetArrayLength() < 2)
        {
            return null;
        }

        var entries = list.EnumerateArray().Take((10 * SoundingLimits.Levels) + 1).ToList();
        if (entries.Exists(entry => entry.ValueKind != JsonValueKind.Object))
        {
            return null;
        }

        var names = entries.SelectMany(entry => entry.EnumerateObject().Select(property => property.Name)).Distinct().Take(100).ToList();
        var foreign = names.FindAll(name => !JsonLevel.Names.Contains(name, StringComparer.OrdinalIgnoreCase) && !JsonLevel.Derived.Contains(name, StringComparer.OrdinalIgnoreCase));
        if (!foreign.Exists(name => CsvColumn.Meaning(name) is not null) || CsvHeader.KnownCells(names) < 2)
        {
            return null;
        }

        List<(int Line, string[] Cells)> rows = [.. entries.Select((entry, i) => (i, names.ConvertAll(name => Cell(entry, name, $"{path}[{i}].{name}")).ToArray()))];
        var header = CsvHeader.Read(names, [], 1, new UnitGuess([.. rows.Select(row => row.Cells)], decimalComma: false));
        return CsvRows.Read(header, ',', rows, () => Begin(root), i => new(Field: $"{path}[{i}]"));
    }

    /// <summary>Columns of figures of one length under such names, and the names.</summary>
    private static (List<string> Names, List<(int Line, string[] Cells)> Rows)? Columns(JsonElement root)
    {
        var columns = root.ValueKind == JsonValueKind.Object
            ? root.EnumerateObject().Where(property => property.Value.ValueKind == JsonValueKind.Array && CsvColumn.Meaning(property.Name) is not null).ToList()
            : [];
        if (columns.Count < 2 || columns.TrueForAll(column => JsonLevel.Names.Contains(column.Name, StringComparer.OrdinalIgnoreCase)))
        {
            return null;
        }

        var length = columns[0].Value.GetArrayLength();
        var unequal = columns.Find(column => column.Value.GetArrayLength() != length);
        if (unequal.Value.ValueKind == JsonValueKind.Array)
        {
            throw new Origin(Field: unequal.Name).Refuse("columns-unequal", $"the column has {unequal.Value.GetArrayLength()} values, \"{columns[0].Name}\" has {length}.");
        }

        var cells = columns.ConvertAll(column => column.Value.EnumerateArray().Take(SoundingLimits.Levels + 1)
            .Select((value, i) => Written(value, column.Name, $"{column.Name}[{i}]")).ToArray());
        return ([.. columns.Select(column => column.Name)], [.. Enumerable.Range(0, Math.Min(length, SoundingLimits.Levels + 1)).Select(i => (i, cells.Select(column => column[i]).ToArray()))]);
    }

    private static (JsonElement List, string Path)? List(JsonElement root)
    {
        if (root.ValueKind == JsonValueKind.Array)
        {
            return (root, "levels");
        }

        var lists = root.ValueKind == JsonValueKind.Object
            ? root.EnumerateObject().Where(property => property.Value.ValueKind == JsonValueKind.Array && Lists.Contains(property.Name, StringComparer.OrdinalIgnoreCase)).ToList()
            : [];
        return lists.Count > 0 ? (lists[0].Value, lists[0].Name) : null;
    }

    private static string Cell(JsonElement entry, string name, string path) =>
        entry.TryGetProperty(name, out var value) ? Written(value, name, path) : "";

    private static string Written(JsonElement value, string name, string path) => value.ValueKind switch
    {
        JsonValueKind.Null => "",
        JsonValueKind.String => value.GetString() ?? "",
        JsonValueKind.Number => value.GetRawText(),
        _ when CsvColumn.Meaning(name) is null => "",
        _ => throw new Origin(Field: path).Refuse("field-invalid", "a number is expected. Leave out what was not measured, or write null."),
    };

    private static ReadAscent Begin(JsonElement root)
    {
        var facts = new JsonFields(root, "");
        var source = facts.Object("source") ?? facts.Object("station") ?? facts.Object("metadata") ?? facts.Object("meta");
        string? Text(params string[] names) => names.Select(name => OfKind(facts, name) ?? (source is null ? null : OfKind(source, name))).FirstOrDefault(text => text is not null);
        double? Number(params string[] names) => Text(names) is { } text && CsvNumber.TryRead(text, false, out var value) ? value : null;
        return new()
        {
            Source = new()
            {
                Format = JsonSounding.FormatName,
                Name = Text("name"),
                Station = Text("station", "stationId", "station_id", "wmo", "id"),
                ValidAt = Text("validAt", "valid", "time", "datetime", "date") is { } time ? Timestamp.Parse(time) : null,
                Position = SourceFacts.Position(Number("latitude", "lat"), Number("longitude", "lon", "lng"), new(Field: "latitude")),
                Elevation = SourceFacts.Elevation(Number("elevationM", "elevation_m", "elevation", "elev"), new(Field: "elevationM")),
            },
            SurfacePressureHpa = SourceFacts.GroundPressure(Number("surfacePressureHpa", "qfeHpa"), new(Field: "surfacePressureHpa")),
            QnhHpa = SourceFacts.GroundPressure(Number("qnhHpa"), new(Field: "qnhHpa")),
        };
    }

    private static string? OfKind(JsonFields fields, string name) => fields.Object(name) is null && fields.Array(name) is null ? fields.Text(name) : null;
}
