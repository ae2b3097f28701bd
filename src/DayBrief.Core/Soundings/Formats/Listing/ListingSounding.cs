using DayBrief.Soundings.Formats.Csv;

namespace DayBrief.Soundings.Formats.Listing;

/// <summary>A table of levels in columns of fixed width or parted by spaces, as archives of ascents print it.</summary>
internal static class ListingSounding
{
    public const string FormatName = "Listing";

    public static SoundingFormat Format { get; } = new(
        new(FormatName, "columns under names of quantities, with a line of units or the usual short names", "PRES HGHT TEMP DWPT DRCT SKNT, then a line for each level"),
        input => input.Plain is { } text && ListingTable.All(text).Count > 0,
        input => Read(input.Plain!));

    private static List<ReadAscent> Read(string text) => [.. ListingTable.All(text).SelectMany(Ascents)];

    private static List<ReadAscent> Ascents(ListingTable table)
    {
        var rows = table.Rows.Cells();
        if (rows.Count == 0)
        {
            throw new Origin(table.Rows.Skipped.FirstLine).Refuse(
                "columns-unclear", $"the line cannot be shared out among the {table.Columns.Count} columns of line {table.HeaderLine}. Give it with its spaces, or parted by semicolons, and each column with a name of one word.");
        }

        var names = table.Columns.Select(column => column.Name).ToList();
        var guess = new UnitGuess([.. rows.Select(row => row.Cells)], decimalComma: true);
        var header = CsvHeader.Read(names, table.Units, table.HeaderLine, guess);
        var ascents = CsvRows.Read(header, ' ', rows, () => Begin(table));
        foreach (var ascent in ascents.Where(_ => table.Rows.Skipped.Count > 0))
        {
            ascent.Warn(
                "rows-left-out",
                $"{table.Rows.Skipped.Count} of {rows.Count + table.Rows.Skipped.Count} lines of the table are left out, the first in line {table.Rows.Skipped.FirstLine}: their figures cannot be told apart by column.");
        }

        return ascents;
    }

    private static ReadAscent Begin(ListingTable table)
    {
        var ascent = new ReadAscent { Source = new() { Format = FormatName } };
        table.Comments.Describe(ascent);
        table.Facts.Describe(ascent);
        return ascent;
    }
}
