namespace DayBrief.Soundings.Formats.Listing;

/// <summary>Finds for each figure of a line the column in which it stands. A full line gives them in order; in others the place
/// decides, as the full lines show it, and a figure that could be of two columns is of none.</summary>
internal sealed class ListingRows(IReadOnlyList<ListingColumn> columns)
{
    private readonly List<(int Line, List<ListingColumn> Words)> _lines = [];

    public int Count => _lines.Count;

    /// <summary>Lines of figures that could not be read, and the first of them.</summary>
    public (int Count, int FirstLine) Skipped { get; private set; }

    public void Add(int line, List<ListingColumn> words) => _lines.Add((line, words));

    public void Skip(int line) => Skipped = (Skipped.Count + 1, Skipped.Count == 0 ? line : Skipped.FirstLine);

    /// <summary>Each line's cells, as many as there are columns; blank where nothing stands.</summary>
    public List<(int Line, string[] Cells)> Cells()
    {
        var places = Places();
        var rows = new List<(int, string[])>(_lines.Count);
        foreach (var (line, words) in _lines)
        {
            var cells = words.Count == columns.Count ? [.. words.Select(word => word.Name)] : places is null ? null : ByPlace(words, places);
            if (cells is null)
            {
                Skip(line);
            }
            else
            {
                rows.Add((line, cells));
            }
        }

        return rows;
    }

    /// <summary>First and last character of each column; null where columns overlap, so that a place tells nothing.</summary>
    private (int Start, int End)[]? Places()
    {
        var full = _lines.Where(line => line.Words.Count == columns.Count).ToList();
        var places = columns.Select((column, i) => (
            Start: full.Count > 0 ? full.Min(line => line.Words[i].Start) : column.Start,
            End: full.Count > 0 ? full.Max(line => line.Words[i].End) : column.End)).ToArray();
        for (var i = 1; i < places.Length; i++)
        {
            if (places[i].Start < places[i - 1].End)
            {
                return null;
            }
        }

        return full.Count > 0 || _lines.TrueForAll(line => ByPlace(line.Words, places) is not null) ? places : null;
    }

    private string[]? ByPlace(List<ListingColumn> words, (int Start, int End)[] places)
    {
        var cells = Enumerable.Repeat("", columns.Count).ToArray();
        foreach (var word in words)
        {
            // A figure may be wider than those of the full lines, but then it ends or begins where they do.
            var inside = Enumerable.Range(0, places.Length).Where(i => word.Start < places[i].End && word.End > places[i].Start).ToList();
            if (inside.Count != 1 || cells[inside[0]].Length > 0)
            {
                return null;
            }

            cells[inside[0]] = word.Name;
        }

        return cells;
    }
}
