using DayBrief.Service.Charts;

namespace DayBrief.Service.Features.Briefs;

/// <summary>Foot of the sheet: a ruled strip for what really happened, the code that leads to the live brief, the advice.</summary>
internal static class SheetFoot
{
    /// <summary>Rows to write in.</summary>
    public const int Rows = 6;

    private const double Head = 13;
    private const double Title = 14;
    private const double AdviceSize = 8.5;

    public static SheetBlock Strip(SheetOrder order, SheetSqueeze squeeze)
    {
        var strip = Head + (Rows * squeeze.StripRow);
        var address = order.Address is { } known ? new SetText(order.Reader.Say($"The live brief: {known}"), SheetSurface.Inner, 9.5, lead: 1.16) : null;
        return new(Title + strip + (address is null ? 4 : address.Height + 5), (drawing, top) =>
        {
            var y = top + Title;
            var code = order.Address is null ? 0 : strip;
            Ruled(drawing, order.Reader, y, SheetSurface.Inner - (code > 0 ? code + 10 : 0), squeeze.StripRow);
            if (order.Address is null || address is null)
                return;
            var drawn = QrCode.Draw(order.Address);
            drawing.Place(drawn, SheetSurface.Right - code, y, code / drawn.Width);
            address.Draw(drawing, SheetSurface.Left, y + strip + 2);
        });
    }

    public static SheetBlock Advice(SheetOrder order)
    {
        var text = new SetText(order.Reader[Briefs.Advice.Standing], SheetSurface.Inner, AdviceSize);
        return new(text.Height, (drawing, top) => text.Draw(drawing, SheetSurface.Left, top, Ink.Grey));
    }

    private static void Ruled(Drawing drawing, Reader reader, double y, double width, double row)
    {
        drawing.Text(SheetSurface.Left, y - 4, reader["What really happened today"], new TextStyle(11) { Bold = true });
        string[] columns = [reader["time [column]"], reader["top reached"], reader["climb [column]"], reader["cloud base, oktas"], reader["wind"], reader["initials"]];
        double[] shares = [0.11, 0.18, 0.13, 0.25, 0.19, 0.14];
        var (x, bottom) = (SheetSurface.Left, y + Head + (Rows * row));
        for (var i = 0; i < columns.Length; i++)
        {
            drawing.Text(x + 3, y + 9.5, columns[i], new TextStyle(Math.Min(9, 9 * ((shares[i] * width) - 6) / Typeface.WidthOf(columns[i], 9))) { Ink = Ink.Grey });
            if (i > 0)
                drawing.Line(x, y, x, bottom, Stroke.Fine);
            x += shares[i] * width;
        }

        drawing.Line(SheetSurface.Left, y, SheetSurface.Left + width, y, Stroke.Fine);
        for (var i = 0; i <= Rows; i++)
            drawing.Line(SheetSurface.Left, y + Head + (i * row), SheetSurface.Left + width, y + Head + (i * row), Stroke.Fine);
    }
}
