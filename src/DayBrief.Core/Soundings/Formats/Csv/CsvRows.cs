namespace DayBrief.Soundings.Formats.Csv;

/// <summary>Makes ascents of the rows of a table, whatever parted its cells.</summary>
internal static class CsvRows
{
    /// <param name="header">The columns.</param>
    /// <param name="delimiter">What parts the cells: tells whether a comma may be the decimal mark.</param>
    /// <param name="rows">Each row's cells and its number.</param>
    /// <param name="begin">An ascent with the facts that the input states.</param>
    /// <param name="at">Where a row stands, from its number.</param>
    public static List<ReadAscent> Read(
        CsvHeader header, char delimiter, IReadOnlyList<(int Line, string[] Cells)> rows, Func<ReadAscent> begin, Func<int, Origin>? at = null)
    {
        var parted = CsvThousands.Join(header, rows);
        var reader = new CsvLevels(header, delimiter, begin(), at);
        var ascents = new CsvAscents(header, begin);
        foreach (var (line, cells) in rows)
        {
            if (reader.Level(line, cells) is { } level)
            {
                ascents.Add(level, cells);
            }
        }

        var read = ascents.Close();
        foreach (var ascent in read)
        {
            reader.Remark(ascent);
            if (parted.Count > 0)
            {
                ascent.Warn("thousands-parted", $"In {string.Join(", ", parted.Select(column => column.Header))} a point or comma parts the thousands: 1.219 is read as 1219.");
            }
        }

        return read;
    }
}
