namespace DayBrief.Soundings.Formats.Csv;

/// <summary>A table of levels whose header names quantity and unit.</summary>
internal static class CsvSounding
{
    public const string FormatName = "CSV";

    public static SoundingFormat Format { get; } = new(
        new(FormatName, "RFC 4180, with a header that names quantity and unit", "pressure_hpa,height_m,temperature_c, …"),
        input => input.Text is { } text && CsvTable.Find(text) is not null,
        input => Read(CsvTable.Find(input.Text!)!));

    private static List<ReadAscent> Read(CsvTable table)
    {
        using var rows = table.Rows().GetEnumerator();
        if (!rows.MoveNext())
        {
            throw new Origin(table.HeaderLine).Refuse("csv-invalid", "the header cannot be read.");
        }

        var header = rows.Current.Cells;
        var more = rows.MoveNext();
        var units = more && IsUnitRow(rows.Current.Cells) ? rows.Current.Cells : [];
        var columns = CsvHeader.Read(header, units, table.HeaderLine);
        more = units.Length > 0 ? rows.MoveNext() : more;
        var reader = new CsvLevels(columns, table.Delimiter, Begin(table));
        var ascents = new CsvAscents(columns, () => Begin(table));
        for (; more; more = rows.MoveNext())
        {
            if (reader.Level(rows.Current.Line, rows.Current.Cells) is { } level)
            {
                ascents.Add(level, rows.Current.Cells);
            }
        }

        var read = ascents.Close();
        read.ForEach(reader.Remark);
        return read;
    }

    private static ReadAscent Begin(CsvTable table)
    {
        var ascent = new ReadAscent { Source = new() { Format = FormatName } };
        table.Comments.Describe(ascent);
        return ascent;
    }

    private static bool IsUnitRow(string[] cells) =>
        cells.Any(cell => CsvColumn.UnitOf(cell).Length > 0)
        && cells.All(cell => string.IsNullOrWhiteSpace(cell) || CsvColumn.UnitOf(cell).Length > 0);
}
