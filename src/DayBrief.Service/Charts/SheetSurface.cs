namespace DayBrief.Service.Charts;

/// <summary>An A4 page in points that is filled from the top.</summary>
internal sealed class SheetSurface(string title, string description)
{
    public const double PageWidth = 595.28;
    public const double PageHeight = 841.89;
    public const double Left = 34;
    public const double Inner = PageWidth - (2 * Left);
    public const double Right = Left + Inner;
    public const double Top = 26;
    public const double Bottom = PageHeight - 28;

    public Drawing Drawing { get; } = new(PageWidth, PageHeight, title, description);

    /// <summary>Where the next block begins.</summary>
    public double Y { get; set; } = 30;

    public void Paragraph(string text, double size, bool bold = false, double lead = 1.25)
    {
        foreach (var line in Typeface.Wrap(text, Inner, size, bold))
        {
            Y += size * lead;
            Drawing.Text(Left, Y, line, new TextStyle(size) { Bold = bold });
        }
    }

    public void Banner(string text)
    {
        var lines = Typeface.Wrap(text, Inner - 16, 15, bold: true);
        var height = 7 + (18 * lines.Count);
        Drawing.Rectangle(Left, Y + 5, Inner, height, new Stroke(Ink.Black, 1.8));
        for (var i = 0; i < lines.Count; i++)
            Drawing.Text(Left + 8, Y + 22 + (18 * i), lines[i], new TextStyle(15) { Bold = true });
        Y += height + 8;
    }

    /// <summary>A block of wrapped lines in a column; returns where it ends.</summary>
    public double Column(double x, double y, double width, double size, string text, string? lead = null)
    {
        // The lead is set bold on the first line; the rest flows round it.
        var indent = lead is null ? 0 : Typeface.WidthOf(lead + " ", size, bold: true);
        if (lead is not null)
            Drawing.Text(x, y, lead, new TextStyle(size) { Bold = true });
        foreach (var (line, start) in Typeface.Flow(text, width, size, indent: indent))
        {
            Drawing.Text(x + start, y, line, new TextStyle(size));
            y += size * 1.22;
        }

        return y;
    }

    /// <summary>Height that <see cref="Column"/> will take.</summary>
    public static double ColumnHeight(double width, double size, string text, string? lead = null) =>
        Typeface.Flow(text, width, size, indent: lead is null ? 0 : Typeface.WidthOf(lead + " ", size, bold: true)).Count() * size * 1.22;
}
