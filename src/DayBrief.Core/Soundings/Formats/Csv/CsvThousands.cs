using System.Text.RegularExpressions;

namespace DayBrief.Soundings.Formats.Csv;

/// <summary>Finds columns whose figures have their thousands parted: "1.219" beside "598" is 1,219 m and not 1.2 m.</summary>
internal static partial class CsvThousands
{
    /// <summary>Rows in which such figures are written without the mark, and the columns concerned.</summary>
    public static IReadOnlyList<CsvColumn> Join(CsvHeader header, IReadOnlyList<(int Line, string[] Cells)> rows)
    {
        var found = header.Columns.Where(column =>
            column.Quantity is CsvQuantity.Pressure or CsvQuantity.Height or CsvQuantity.HeightAboveGround && Parted(column, rows)).ToList();
        foreach (var column in found)
        {
            foreach (var (_, cells) in rows)
            {
                if (column.Index < cells.Length && Grouped().Match(cells[column.Index].Trim()) is { Success: true } match)
                {
                    cells[column.Index] = Marks().Replace(match.Groups[1].Value, "") + match.Groups[3].Value.Replace(',', '.');
                }
            }
        }

        return found;
    }

    private static bool Parted(CsvColumn column, IReadOnlyList<(int Line, string[] Cells)> rows)
    {
        var cells = rows.Where(row => column.Index < row.Cells.Length).Select(row => row.Cells[column.Index].Trim()).Where(cell => cell.Length > 0).ToList();
        var grouped = cells.FindAll(cell => Grouped().IsMatch(cell));
        if (grouped.Count == 0)
        {
            return false;
        }

        // With decimals after it, or with an apostrophe, the mark can be nothing else.
        if (grouped.Exists(cell => Grouped().Match(cell).Groups[3].Length > 0 || cell.Contains('\'', StringComparison.Ordinal) || cell.Contains('’', StringComparison.Ordinal)))
        {
            return true;
        }

        var other = cells.FindAll(cell => !Grouped().IsMatch(cell) && CsvNumber.TryRead(cell, true, out var value) && value is not null);
        var asDecimals = grouped.ConvertAll(cell => Decimal(cell));
        return other.TrueForAll(cell => Whole().IsMatch(cell))
            && (other.Count > 0
                ? asDecimals.Max() < other.Max(Decimal)
                : column.ToBase(asDecimals.Max()) < 100 && column.ToBase(1) < 100);
    }

    private static double Decimal(string cell) => CsvNumber.TryRead(cell, true, out var value) ? value ?? 0 : 0;

    [GeneratedRegex(@"^([+-]?[0-9]{1,3}(?:([.,'’ ])[0-9]{3})(?:\2[0-9]{3})*)((?!\2)[.,][0-9]+)?$")]
    private static partial Regex Grouped();

    [GeneratedRegex(@"^[+-]?[0-9]{1,3}$")]
    private static partial Regex Whole();

    [GeneratedRegex(@"[.,'’ ]")]
    private static partial Regex Marks();
}
