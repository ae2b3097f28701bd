using DayBrief.Service.Charts;

namespace DayBrief.Service.Features.Briefs;

/// <summary>A table of few rows and many columns over the whole width, its first row the head; where not all columns have room,
/// every second or third stands.</summary>
internal static class SheetTable
{
    private const double Size = 10.5;
    private const double RowHeight = 13;
    private const double MostColumn = 60;

    /// <param name="rows">Name and cells; a row without cells is a remark over the whole width.</param>
    public static SheetBlock Of(IReadOnlyList<(string Name, IReadOnlyList<string> Cells)> rows)
    {
        var names = 8 + rows.Where(row => row.Cells.Count > 0).Max(row => Typeface.WidthOf(row.Name, Size, bold: true));
        var widest = 7 + rows.SelectMany(row => row.Cells).Max(cell => Typeface.WidthOf(cell, Size, bold: true));
        var every = (int)Math.Ceiling(rows[0].Cells.Count * widest / (SheetSurface.Inner - names));
        var shown = Enumerable.Range(0, rows[0].Cells.Count).Where(i => i % every == 0).ToArray();
        var column = Math.Min(Math.Max(widest, MostColumn), (SheetSurface.Inner - names) / shown.Length);
        return new((rows.Count * RowHeight) + 7, (drawing, top) =>
        {
            drawing.Line(SheetSurface.Left, top, SheetSurface.Right, top, new Stroke(Ink.Black, 1));
            drawing.Line(SheetSurface.Left, top + RowHeight + 1.5, SheetSurface.Right, top + RowHeight + 1.5, Stroke.Grid);
            for (var row = 0; row < rows.Count; row++)
            {
                var y = top + (RowHeight * (row + 1)) - (row == 0 ? 2 : 0);
                drawing.Text(SheetSurface.Left, y, rows[row].Name, new TextStyle(Size) { Bold = row == 0 });
                for (var i = 0; rows[row].Cells.Count > 0 && i < shown.Length; i++)
                    drawing.Text(SheetSurface.Left + names + (column * (i + 1)) - 1, y, rows[row].Cells[shown[i]], new TextStyle(Size) { Bold = row == 0, Anchor = Anchor.End });
            }
        });
    }
}
