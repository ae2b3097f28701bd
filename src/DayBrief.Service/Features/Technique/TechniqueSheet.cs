using DayBrief.Service.Charts;

namespace DayBrief.Service.Features.Technique;

/// <summary>A second A4 page for the board: how to fly today's thermal, with both drawings.</summary>
internal static class TechniqueSheet
{
    private const double Size = 11;
    private const double Gap = 22;
    private const double Column = (SheetSurface.Inner - Gap) / 2;
    private const double RightLeft = SheetSurface.Left + Column + Gap;

    public static Drawing Draw(TechniqueFacts facts, string title, string subtitle, IEnumerable<string> banners, string advice)
    {
        var say = facts.Measures;
        var sheet = new SheetSurface(title, string.Join(' ', TechniqueText.Centre(facts)));
        sheet.Paragraph(title, 21, bold: true);
        sheet.Paragraph(subtitle, 10);
        foreach (var banner in banners)
            sheet.Banner(banner);
        sheet.Y += 8;
        sheet.Drawing.Line(SheetSurface.Left, sheet.Y, SheetSurface.Right, sheet.Y, new Stroke(Ink.Black, 1.6));
        var top = sheet.Y + 20;
        var left = Block(sheet, SheetSurface.Left, top, say["Finding it"], TechniqueText.Find(facts));
        left = Block(sheet, SheetSurface.Left, left, say["Centring it"], TechniqueText.Centre(facts));
        left = Place(sheet, SheetSurface.Left, left, TechniqueCharts.Plan(facts.Thermal, facts.Study, facts.Brief.Day.Wind?.Mean, facts.Measures.Figures));
        Block(sheet, SheetSurface.Left, left, say["When to leave"], TechniqueText.Leave(facts));
        var right = Block(sheet, RightLeft, top, say["Holding it"], TechniqueText.Hold(facts));
        right = Place(sheet, RightLeft, right, TechniqueCharts.Section(facts));
        Block(sheet, RightLeft, right, say["What not to do, and what it costs today"], AvoidText.Of(facts.Study, facts.Measures));
        Foot(sheet, advice);
        return sheet.Drawing;
    }

    private static double Block(SheetSurface sheet, double x, double y, string title, IEnumerable<string> lines)
    {
        sheet.Drawing.Text(x, y, title, new TextStyle(13) { Bold = true });
        y += 17;
        foreach (var line in lines)
            y = sheet.Column(x, y, Column, Size, line) + 3;
        return y + 9;
    }

    private static double Place(SheetSurface sheet, double x, double y, Drawing drawing)
    {
        var scale = Column / drawing.Width;
        sheet.Drawing.Place(drawing, x, y - 8, scale);
        return y + (drawing.Height * scale) + 8;
    }

    private static void Foot(SheetSurface sheet, string advice)
    {
        var lines = Typeface.Wrap(advice, SheetSurface.Inner, 8.5);
        for (var i = 0; i < lines.Count; i++)
            sheet.Drawing.Text(SheetSurface.Left, SheetSurface.Bottom - (10.5 * (lines.Count - 1 - i)), lines[i], new TextStyle(8.5) { Ink = Ink.Grey });
    }
}
