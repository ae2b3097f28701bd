using DayBrief.Soundings.Formats.Csv;

namespace DayBrief.Soundings.Formats.Listing;

/// <summary>One table of figures under names, without separators, and what is said around it.</summary>
internal sealed class ListingTable(int headerLine, IReadOnlyList<ListingColumn> columns)
{
    private const int LinesSearched = 3000;
    private const int LinesToFirstRow = 6;
    private const int MostRows = 10 * SoundingLimits.Levels;

    public int HeaderLine { get; } = headerLine;

    public IReadOnlyList<ListingColumn> Columns { get; } = columns;

    /// <summary>A line of units under the names, as many as there are columns; otherwise empty.</summary>
    public string[] Units { get; private set; } = [];

    public ListingRows Rows { get; } = new(columns);

    public ListingFacts Facts { get; private init; } = new();

    public CsvComments Comments { get; private init; } = new();

    /// <summary>All tables of a text, in the order given.</summary>
    public static List<ListingTable> All(string text)
    {
        var tables = new List<ListingTable>();
        var (facts, comments) = (new ListingFacts(), new CsvComments());
        ListingTable? open = null;
        var (number, waited, titled) = (0, 0, false);
        foreach (var line in Lines(text))
        {
            if (++number > LinesSearched && tables.Count == 0)
            {
                break;
            }

            if (open is not null && open.Takes(number, line))
            {
                continue;
            }

            if (ListingColumn.Header(line) is { } columns)
            {
                tables.Add(open = new(number, columns) { Facts = facts, Comments = comments });
                (facts, comments, waited, titled) = (new(), new(), 0, false);
                continue;
            }

            // Prose: after a table it is still about that one, until the title of the next.
            open = open is { Rows.Count: 0 } && ++waited < LinesToFirstRow ? open : null;
            titled |= ListingFacts.IsTitle(line);
            Describe(line, number, tables.Count > 0 && !titled ? tables[^1].Facts : facts, comments);
        }

        return [.. tables.Where(table => table.Rows.Count > 0)];
    }

    private static void Describe(string line, int number, ListingFacts facts, CsvComments comments)
    {
        if (line.TrimStart() is ['#', ..])
        {
            comments.Add(line, number);
        }

        facts.Take(line);
    }

    /// <summary>Whether a line belongs to the table: figures, units, a rule, nothing.</summary>
    private bool Takes(int number, string line)
    {
        var words = ListingColumn.Split(line, spaces: 1);
        if (words.Count == 0 || words.TrueForAll(word => word.Name.Trim('-', '=', '_', '+', '*', '#', '|').Length == 0 && word.Name.Length > 2))
        {
            return true;
        }

        if (Rows.Count == 0 && Units.Length == 0 && UnitsOf(words) is { } units)
        {
            Units = units;
            return true;
        }

        var figures = words.Count(word => CsvNumber.IsFigure(word.Name));
        if (figures == words.Count && words.Count >= 2)
        {
            if (Rows.Count >= MostRows)
            {
                throw new Origin(number).Refuse("too-many-levels", $"More than {MostRows:N0} rows.");
            }

            Rows.Add(number, words);
            return true;
        }

        // A line of figures with something foreign among them is a damaged row, not the end.
        if (Rows.Count > 0 && figures >= 2 && 2 * figures > words.Count && CsvNumber.IsFigure(words[0].Name))
        {
            Rows.Skip(number);
            return true;
        }

        return false;
    }

    private string[]? UnitsOf(List<ListingColumn> words)
    {
        words = words is [{ Name: "#" }, ..] ? words[1..] : words;
        if (!words.TrueForAll(word => CsvColumn.UnitOf(word.Name).Length > 0) || words.Count > Columns.Count)
        {
            return null;
        }

        var units = Enumerable.Repeat("", Columns.Count).ToArray();
        for (var i = 0; i < words.Count; i++)
        {
            var at = words.Count == Columns.Count ? i : Nearest(words[i]);
            units[at] = units[at].Length == 0 ? words[i].Name : units[at];
        }

        return units;
    }

    private int Nearest(ListingColumn word) => Enumerable.Range(0, Columns.Count)
        .MinBy(i => Math.Min(Math.Abs(Columns[i].End - word.End), Math.Abs(Columns[i].Start - word.Start)));

    private static IEnumerable<string> Lines(string text)
    {
        using var reader = new StringReader(text);
        while (reader.ReadLine() is { } line)
        {
            yield return line.Length > 2000 ? "" : line.TrimEnd();
        }
    }
}
