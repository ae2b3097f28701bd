using System.Globalization;
using System.Text.RegularExpressions;

namespace DayBrief;

/// <summary>A comma-separated case file as rows of named fields. Header notes in brackets are dropped; quotes may hold commas.</summary>
internal sealed partial class CaseTable
{
    private readonly Dictionary<string, int> _columns;
    private readonly string[][] _rows;

    private CaseTable(string[] header, string[][] rows)
    {
        _columns = header.Select((name, index) => (name: Note().Replace(name, ""), index))
            .ToDictionary(entry => entry.name, entry => entry.index);
        _rows = rows;
    }

    public int Count => _rows.Length;

    public static CaseTable Read(string path)
    {
        var lines = File.ReadLines(path).Where(line => line.Length > 0).Select(Split).ToArray();
        return new(lines[0], lines[1..]);
    }

    public bool Has(string column) => _columns.ContainsKey(column);

    public string Text(int row, string column) => _rows[row][_columns[column]];

    public double? Number(int row, string column) =>
        double.TryParse(Text(row, column), NumberStyles.Float, CultureInfo.InvariantCulture, out var value) ? value : null;

    public double[] Column(string column) => [.. Enumerable.Range(0, Count).Select(row => Number(row, column) ?? double.NaN)];

    private static string[] Split(string line) =>
        [.. Field().Matches(line).Select(match => match.Groups[1].Value.Trim('"'))];

    [GeneratedRegex("""(?:^|,)("[^"]*"|[^,]*)""")]
    private static partial Regex Field();

    [GeneratedRegex(@"\(.*\)$")]
    private static partial Regex Note();
}
