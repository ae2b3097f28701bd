using DayBrief.Service.Charts;

namespace DayBrief.Service.Features.Briefs;

/// <summary>Foot of the sheet: a ruled strip for what really happened, the code that leads to the live brief, the advice.</summary>
internal static class SheetFoot
{
    private const double StripHeight = 74;
    private const double CodeSize = 74;

    /// <summary>Draws from the bottom up; returns where the foot begins.</summary>
    public static double Draw(SheetSurface sheet, Reader reader, string? address)
    {
        var advice = Typeface.Wrap(reader[Advice.Standing], SheetSurface.Inner, 8.5);
        var y = SheetSurface.Bottom - (advice.Count * 10.5);
        for (var i = 0; i < advice.Count; i++)
            sheet.Drawing.Text(SheetSurface.Left, y + 8 + (i * 10.5), advice[i], new TextStyle(8.5) { Ink = Ink.Grey });
        y -= StripHeight + 8;
        Strip(sheet, reader, y, address is null ? SheetSurface.Inner : SheetSurface.Inner - CodeSize - 14);
        if (address is not null)
            Code(sheet, reader, y, address);
        return y - 22;
    }

    private static void Strip(SheetSurface sheet, Reader reader, double y, double width)
    {
        sheet.Drawing.Text(SheetSurface.Left, y - 4, reader["What really happened today"], new TextStyle(10) { Bold = true });
        string[] columns = [reader["time [column]"], reader["top reached"], reader["climb [column]"], reader["cloud base, oktas"], reader["wind"], reader["initials"]];
        var column = width / columns.Length;
        for (var i = 0; i < columns.Length; i++)
        {
            sheet.Drawing.Text(SheetSurface.Left + (i * column) + 3, y + 10, columns[i], new TextStyle(8.5) { Ink = Ink.Grey });
            if (i > 0)
                sheet.Drawing.Line(SheetSurface.Left + (i * column), y, SheetSurface.Left + (i * column), y + StripHeight, Stroke.Fine);
        }

        for (var row = 0; row <= 3; row++)
        {
            var line = row == 0 ? y : y + 14 + (row * 20);
            sheet.Drawing.Line(SheetSurface.Left, line, SheetSurface.Left + width, line, Stroke.Fine);
        }
    }

    private static void Code(SheetSurface sheet, Reader reader, double y, string address)
    {
        var code = QrCode.Draw(address);
        sheet.Drawing.Place(code, SheetSurface.Right - CodeSize, y - 4, CodeSize / code.Width);
        var text = reader.Say($"The live brief: {address}");
        var size = Math.Min(9, 9 * 330 / Typeface.WidthOf(text, 9));
        sheet.Drawing.Text(SheetSurface.Right - CodeSize - 14, y - 4, text, new TextStyle(size) { Anchor = Anchor.End });
    }
}
