using DayBrief.Service.Charts;

namespace DayBrief.Service.Features.Briefs;

/// <summary>Top of the sheet: field, day, who, when, and the ascent behind it.</summary>
internal static class SheetHead
{
    public static void Draw(SheetSurface sheet, MadeBrief made, Reader reader, DateTimeOffset now)
    {
        var (drawing, brief) = (sheet.Drawing, made.Brief);
        var date = reader.Date(brief.Date);
        var dateWidth = Typeface.WidthOf(date, 17, bold: true);
        var name = brief.Site.Name;
        var size = Math.Min(21, 21 * (SheetSurface.Inner - dateWidth - 14) / Typeface.WidthOf(name, 21, bold: true));
        drawing.Text(SheetSurface.Left, sheet.Y + 16, name, new TextStyle(size) { Bold = true });
        drawing.Text(SheetSurface.Right, sheet.Y + 16, date, new TextStyle(17) { Bold = true, Anchor = Anchor.End });
        sheet.Y += 20;
        Standing(sheet, made, reader);
        sheet.Paragraph(
            $"{PreparedWords.Of(made, now, reader)} {AscentWords.Of(made, now, reader)} {reader.Say($"Local time ({reader.ZoneAt(brief.Date)}); heights above the field.")}",
            9.5);
        sheet.Y += 6;
        drawing.Line(SheetSurface.Left, sheet.Y, SheetSurface.Right, sheet.Y, new Stroke(Ink.Black, 1.6));
    }

    /// <summary>Revision and valid until, to be read from a few steps away.</summary>
    private static void Standing(SheetSurface sheet, MadeBrief made, Reader reader)
    {
        var revision = made.Standing?.Revision is { } signed ? reader.Say($"Revision {signed.Number}") : reader["Draft, not signed"];
        if (made.Inputs.Demonstration)
            revision = reader["Demonstration"];
        sheet.Y += 20;
        sheet.Drawing.Text(SheetSurface.Left, sheet.Y, revision, new TextStyle(18) { Bold = true });
        if (DayFigures.ValidUntil(made) is { } until)
            sheet.Drawing.Text(SheetSurface.Right, sheet.Y, reader.Say($"Valid until {reader.Time(until)}"), new TextStyle(18) { Bold = true, Anchor = Anchor.End });
    }
}
