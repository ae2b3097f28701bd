using DayBrief.Days;
using DayBrief.Service.Charts;

namespace DayBrief.Service.Features.Technique;

/// <summary>A second A4 page for the board: how to fly today's thermal, with both drawings.</summary>
internal static class TechniqueSheet
{
    private const double Size = 10.5;
    private const double Gap = 22;
    private const double Column = (SheetSurface.Inner - Gap) / 2;
    private const double TitleHeight = 16;

    /// <summary>Sizes of the words, the largest that fits first.</summary>
    private static readonly double[] Sizes = [Size, 9.8, 9.2];

    private const double LineGap = 2;
    private const double BlockGap = 7;
    private const double PictureGap = 8;

    /// <summary>Below this share of its size a picture's words are no longer read: left out.</summary>
    private const double LeastShare = 0.6;

    /// <summary>Lowest line above the foot.</summary>
    private const double Floor = SheetSurface.Bottom - 26;
    private const double RightLeft = SheetSurface.Left + Column + Gap;

    public static Drawing Draw(TechniqueView view, string title, string subtitle, IEnumerable<string> banners, string advice)
    {
        var sheet = new SheetSurface(title, view.None ?? string.Join(' ', TechniqueText.Centre(view.Facts!)));
        sheet.Paragraph(title, 21, bold: true);
        sheet.Paragraph(subtitle, 10);
        foreach (var banner in banners)
            sheet.Banner(banner);
        sheet.Y += 8;
        sheet.Drawing.Line(SheetSurface.Left, sheet.Y, SheetSurface.Right, sheet.Y, new Stroke(Ink.Black, 1.6));
        Safety(sheet, view);
        if (view.None is { } none)
            sheet.Paragraph(none, 13);
        else
            Advice(sheet, view.Facts!);
        Foot(sheet, advice);
        return sheet.Drawing;
    }

    private static void Safety(SheetSurface sheet, TechniqueView view)
    {
        sheet.Y += 17;
        sheet.Drawing.Text(SheetSurface.Left, sheet.Y, view.Say["Before anything else"], new TextStyle(13) { Bold = true });
        foreach (var line in SafetyText.Of(view))
            sheet.Paragraph(line, Size);
        sheet.Y += 6;
        sheet.Drawing.Line(SheetSurface.Left, sheet.Y, SheetSurface.Right, sheet.Y, new Stroke(Ink.Black, 0.8));
    }

    private static void Advice(SheetSurface sheet, TechniqueFacts facts)
    {
        var say = facts.Measures;
        sheet.Y += 16;
        sheet.Paragraph(CarryText.Of(facts), 14, bold: true);
        Classes(sheet, facts);
        var top = sheet.Y + 15;
        (string Title, string[] Lines) find = (say["Finding it"], [.. TechniqueText.Find(facts)]);
        (string Title, string[] Lines) centre = (say["Centring it"], [.. TechniqueText.Centre(facts)]);
        (string Title, string[] Lines) leave = (say["When to leave"], [.. TechniqueText.Leave(facts)]);
        (string Title, string[] Lines) hold = (say["Holding it"], [.. TechniqueText.Hold(facts)]);
        (string Title, string[] Lines) avoid = (say["What not to do, and what it costs today"], [.. AvoidText.Of(facts.Study, facts.Measures)]);
        // Words before pictures: a picture takes the room that they leave it.
        var size = Sizes.FirstOrDefault(size => Floor - top >= Math.Max(Heights(size, find, centre, leave), Heights(size, hold, avoid)), Sizes[^1]);
        var (leftRoom, rightRoom) = (Floor - top - Heights(size, find, centre, leave), Floor - top - Heights(size, hold, avoid));
        var left = Block(sheet, SheetSurface.Left, Block(sheet, SheetSurface.Left, top, size, find), size, centre);
        left = Place(sheet, SheetSurface.Left, left, leftRoom, TechniqueCharts.Plan(facts.Thermal, facts.Study, facts.Brief.Day.Wind?.Mean, facts.Measures.Figures));
        left = Block(sheet, SheetSurface.Left, left, size, leave);
        var right = Block(sheet, RightLeft, top, size, hold);
        right = Place(sheet, RightLeft, right, rightRoom, TechniqueCharts.Section(facts));
        right = Block(sheet, RightLeft, right, size, avoid);
        if (facts.Pilot.Experience != Experience.BeforeSolo)
            Swing(sheet, left < right ? SheetSurface.Left : RightLeft, Math.Min(left, right), facts);
    }

    private static void Classes(SheetSurface sheet, TechniqueFacts facts)
    {
        const double Row = 11.5;
        double[] edges = [0, 0.5, 0.6, 0.78, 1];
        foreach (var (cells, bold) in ClassTable.Rows(facts).Select(row => (row, false)).Prepend((ClassTable.Head(facts.Measures), facts.Classes.Count > 0)))
        {
            if (facts.Classes.Count == 0)
                return;
            sheet.Y += Row;
            for (var i = 0; i < cells.Count; i++)
                sheet.Drawing.Text(SheetSurface.Left + (SheetSurface.Inner * edges[i]), sheet.Y, cells[i], new TextStyle(9.5) { Bold = bold, Anchor = i == 0 ? Anchor.Start : Anchor.End });
        }
    }

    private static double Heights(double size, params (string Title, string[] Lines)[] blocks) =>
        blocks.Sum(block => TitleHeight + block.Lines.Sum(line => SheetSurface.ColumnHeight(Column, size, line) + LineGap) + BlockGap);

    private static double Block(SheetSurface sheet, double x, double y, double size, (string Title, string[] Lines) block)
    {
        sheet.Drawing.Text(x, y, block.Title, new TextStyle(13) { Bold = true });
        y += TitleHeight;
        foreach (var line in block.Lines)
            y = sheet.Column(x, y, Column, size, line) + LineGap;
        return y + BlockGap;
    }

    /// <summary>The table that the words about a large swing name, as far down as the sheet has room.</summary>
    private static void Swing(SheetSurface sheet, double x, double y, TechniqueFacts facts)
    {
        const double Row = 12;
        double[] edges = [0.17, 0.40, 0.56, 0.69, 1];
        var head = SwingText.Head(facts.Measures);
        if (y + TitleHeight + (2 * Row) > Floor)
            return;
        sheet.Drawing.Text(x, y, facts.Measures["What the swing tells"], new TextStyle(13) { Bold = true });
        y += TitleHeight;
        // The first row is the centred circle.
        foreach (var (cells, bold) in SwingText.Rows(facts).Skip(1).Select(row => (row, false)).Prepend((head, true)))
        {
            if (y > Floor)
                return;
            for (var i = 0; i < cells.Count; i++)
                sheet.Drawing.Text(x + (Column * edges[i]), y, cells[i], new TextStyle(9.5) { Bold = bold, Anchor = Anchor.End });
            y += Row;
        }
    }

    private static double Place(SheetSurface sheet, double x, double y, double room, Drawing drawing)
    {
        var full = Column / drawing.Width;
        var scale = Math.Min(full, (room - PictureGap) / drawing.Height);
        if (scale < LeastShare * full)
            return y;
        sheet.Drawing.Place(drawing, x + ((Column - (scale * drawing.Width)) / 2), y - 8, scale);
        return y + (drawing.Height * scale) + PictureGap;
    }

    private static void Foot(SheetSurface sheet, string advice)
    {
        var lines = Typeface.Wrap(advice, SheetSurface.Inner, 8.5);
        for (var i = 0; i < lines.Count; i++)
            sheet.Drawing.Text(SheetSurface.Left, SheetSurface.Bottom - (10.5 * (lines.Count - 1 - i)), lines[i], new TextStyle(8.5) { Ink = Ink.Grey });
    }
}
