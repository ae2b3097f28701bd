namespace DayBrief.Soundings.Formats.Csv;

/// <summary>A table of levels whose header names quantity and unit.</summary>
internal static class CsvSounding
{
    public const string FormatName = "CSV";

    public static SoundingFormat Format { get; } = new(
        new(FormatName, "RFC 4180, with a header that names quantity and unit", "pressure_hpa,height_m,temperature_c, …"),
        input => input.Plain is { } text && CsvTable.Find(text) is not null,
        input => Read(CsvTable.Find(input.Plain!)!));

    private static List<ReadAscent> Read(CsvTable table)
    {
        var rows = table.Rows().Take((10 * SoundingLimits.Levels) + 3).ToList();
        if (rows.Count == 0)
        {
            throw new Origin(table.HeaderLine).Refuse("csv-invalid", "the header cannot be read.");
        }

        var units = rows.Count > 1 && IsUnitRow(rows[1].Cells) ? rows[1].Cells : [];
        var body = rows[(units.Length > 0 ? 2 : 1)..];
        var guess = new UnitGuess([.. body.Select(row => row.Cells)], table.Delimiter != ',');
        var header = CsvHeader.Read(rows[0].Cells, units, table.HeaderLine, guess);
        return CsvRows.Read(header, table.Delimiter, body, () => Begin(table));
    }

    private static ReadAscent Begin(CsvTable table)
    {
        var ascent = new ReadAscent { Source = new() { Format = FormatName } };
        table.Comments.Describe(ascent);
        table.Facts.Describe(ascent);
        return ascent;
    }

    private static bool IsUnitRow(string[] cells) =>
        cells.Any(cell => CsvColumn.UnitOf(cell).Length > 0)
        && cells.All(cell => string.IsNullOrWhiteSpace(cell) || CsvColumn.UnitOf(cell).Length > 0);
}
