using DayBrief.Soundings.Formats.Listing;
using nietras.SeparatedValues;

namespace DayBrief.Soundings.Formats.Csv;

/// <summary>Finds the header in a text, its delimiter and what stands before it, and reads the rows [RFC4180].</summary>
internal sealed class CsvTable
{
    private const int LinesSearched = 60;

    public required char Delimiter { get; init; }

    /// <summary>Line of the header, from 1.</summary>
    public required int HeaderLine { get; init; }

    /// <summary>The text from the header on.</summary>
    public required ReadOnlyMemory<char> Body { get; init; }

    public required CsvComments Comments { get; init; }

    /// <summary>What the lines before the header say in words.</summary>
    public ListingFacts Facts { get; } = new();

    /// <summary>Null if no line names two quantities that are known here.</summary>
    public static CsvTable? Find(string text)
    {
        var comments = new CsvComments();
        var titles = new List<string>();
        var start = 0;
        for (var line = 1; line <= LinesSearched && start < text.Length; line++)
        {
            var end = text.AsSpan(start).IndexOfAny('\r', '\n') is var found and >= 0 ? start + found : text.Length;
            var content = text.AsSpan(start, end - start).Trim();
            if (content is ['#', ..])
            {
                comments.Add(content.ToString(), line);
            }
            else if (content.Length is > 2 and < 4000 && DelimiterOf(content.ToString()) is { } delimiter)
            {
                var table = new CsvTable { Delimiter = delimiter, HeaderLine = line, Body = text.AsMemory(start), Comments = comments };
                titles.ForEach(table.Facts.Take);
                return table;
            }
            else if (content.Length is > 2 and < 300)
            {
                titles.Add(content.ToString());
            }

            start = end + (end + 1 < text.Length && text[end] == '\r' && text[end + 1] == '\n' ? 2 : 1);
        }

        return null;
    }

    /// <summary>Each row's cells, unquoted, with the line where it begins.</summary>
    public IEnumerable<(int Line, string[] Cells)> Rows()
    {
        using var reader = Sep.New(Delimiter)
            .Reader(options => options with { HasHeader = false, Unescape = true, DisableColCountCheck = true })
            .FromText(Body.ToString());
        while (MoveNext(reader))
        {
            var row = reader.Current;
            var cells = new string[Math.Min(row.ColCount, 1000)];
            for (var i = 0; i < cells.Length; i++)
            {
                cells[i] = row[i].ToString();
            }

            yield return (HeaderLine + row.LineNumberFrom - 1, cells);
        }
    }

    private bool MoveNext(SepReader reader)
    {
        try
        {
            return reader.MoveNext();
        }
        catch (Exception error) when (error is InvalidDataException or NotSupportedException or ArgumentException)
        {
            throw new Origin(HeaderLine).Refuse("csv-invalid", "the table cannot be split into rows; is a quotation mark left open?");
        }
    }

    private static char? DelimiterOf(string line)
    {
        foreach (var delimiter in "\t;,|")
        {
            if (line.Contains(delimiter, StringComparison.Ordinal)
                && CsvHeader.KnownCells(line.Split(delimiter).Select(cell => cell.Trim().Trim('"'))) >= 2)
            {
                return delimiter;
            }
        }

        return null;
    }
}
