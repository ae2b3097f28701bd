using DayBrief.Soundings.Formats.Csv;

namespace DayBrief.Soundings.Formats.Listing;

/// <summary>One column of a table without separators: its name and where that stands in the line.</summary>
/// <param name="Name">Name, with its unit where that stands beside it.</param>
/// <param name="Start">First character.</param>
/// <param name="End">After the last character.</param>
internal readonly record struct ListingColumn(string Name, int Start, int End)
{
    private const int LongestHeader = 600;

    /// <summary>The columns that a line names; null if it is no header: three quantities or more, among them temperature and pressure
    /// or height, and no more foreign words than known ones.</summary>
    public static IReadOnlyList<ListingColumn>? Header(string line)
    {
        if (line.Length is < 5 or > LongestHeader)
        {
            return null;
        }

        // A header may be a comment: "# p z t td".
        var plain = line.TrimStart(' ', '#', '%', '!').Length is var rest && rest < line.Length ? new string(' ', line.Length - rest) + line[^rest..] : line;
        var (wide, narrow) = (Split(plain, spaces: 2), WithUnits(Split(plain, spaces: 1)));
        return KnownOf(narrow).Count > KnownOf(wide).Count ? Known(narrow) : Known(wide);
    }

    /// <summary>The words of a line and where they stand; parted by this many spaces or more.</summary>
    public static List<ListingColumn> Split(string line, int spaces)
    {
        var words = new List<ListingColumn>();
        var start = -1;
        var gap = 0;
        for (var i = 0; i <= line.Length; i++)
        {
            if (i < line.Length && !char.IsWhiteSpace(line[i]))
            {
                start = start < 0 ? i : start;
                gap = 0;
            }
            else if (start >= 0 && (++gap >= spaces || i == line.Length || line[i] == '\t'))
            {
                words.Add(new(line[start..(i - gap + 1)], start, i - gap + 1));
                start = -1;
            }
        }

        return words;
    }

    private static List<ListingColumn>? Known(List<ListingColumn> columns)
    {
        var known = KnownOf(columns);
        return known.Count >= 3 && 2 * known.Count >= columns.Count && known.Contains(CsvQuantity.Temperature)
            && (known.Contains(CsvQuantity.Pressure) || known.Contains(CsvQuantity.Height) || known.Contains(CsvQuantity.HeightAboveGround))
            ? columns
            : null;
    }

    private static List<CsvQuantity> KnownOf(List<ListingColumn> columns) =>
        [.. columns.Select(column => CsvColumn.Meaning(column.Name)?.Quantity).OfType<CsvQuantity>().Distinct()];

    // "PRES [hPa]" are two words of one column.
    private static List<ListingColumn> WithUnits(List<ListingColumn> words)
    {
        var columns = new List<ListingColumn>();
        foreach (var word in words)
        {
            if (columns.Count > 0 && word.Name is ['(' or '[', .., ')' or ']'])
            {
                columns[^1] = new($"{columns[^1].Name} {word.Name}", columns[^1].Start, word.End);
            }
            else
            {
                columns.Add(word);
            }
        }

        return columns;
    }
}
