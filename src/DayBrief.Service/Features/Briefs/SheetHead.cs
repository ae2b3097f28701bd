using DayBrief.Service.Charts;

namespace DayBrief.Service.Features.Briefs;

/// <summary>Top of the sheet: field, day, revision, valid until, who, and the ascent behind it.</summary>
internal static class SheetHead
{
    private const double NameSize = 21;
    private const double DateSize = 17;
    private const double StandingSize = 18;

    /// <summary>A smaller name stands on lines of its own.</summary>
    private const double LeastName = 15;

    /// <summary>Field and day beside each other; a long name has lines of its own, and the day stands below it.</summary>
    public static SheetBlock Names(SheetOrder order)
    {
        var name = order.Made.Brief.Site.Name;
        if (Beside(order) is { } size)
        {
            return new(24, (drawing, top) =>
            {
                drawing.Text(SheetSurface.Left, top + 19, name, new TextStyle(size) { Bold = true });
                drawing.Text(SheetSurface.Right, top + 19, Date(order), new TextStyle(DateSize) { Bold = true, Anchor = Anchor.End });
            });
        }

        return SheetBlock.Of([new(name, SheetSurface.Inner, LeastName, lead: 1.15, allBold: true)]);
    }

    /// <summary>Revision and valid until, to be read from a few steps away; with the day where that has no room beside the name.</summary>
    public static SheetBlock Standing(SheetOrder order)
    {
        var (made, reader) = (order.Made, order.Reader);
        var revision = made switch
        {
            { Inputs.Demonstration: true } => reader["Demonstration"],
            { Standing.Revision: { } signed } => reader.Say($"Revision {signed.Number}"),
            _ => reader["Draft, not signed"],
        };
        string?[] all = [revision, Beside(order) is null ? Date(order) : null, DayFigures.ValidUntil(made) is { } until ? reader.Say($"Valid until {reader.Time(until)}") : null];
        var texts = all.OfType<string>().ToArray();
        var needed = texts.Sum(text => Typeface.WidthOf(text, StandingSize, bold: true)) + (12 * (texts.Length - 1));
        var size = Math.Min(StandingSize, StandingSize * SheetSurface.Inner / needed);
        return new(22, (drawing, top) =>
        {
            var anchors = texts.Length == 3 ? new[] { Anchor.Start, Anchor.Middle, Anchor.End } : [Anchor.Start, Anchor.End];
            var middle = SheetSurface.Left + Typeface.WidthOf(texts[0], size, bold: true);
            middle = (middle + SheetSurface.Right - Typeface.WidthOf(texts[^1], size, bold: true)) / 2;
            for (var i = 0; i < texts.Length; i++)
            {
                var x = anchors[i] switch { Anchor.Start => SheetSurface.Left, Anchor.Middle => middle, _ => SheetSurface.Right };
                drawing.Text(x, top + 17, texts[i], new TextStyle(size) { Bold = true, Anchor = anchors[i] });
            }
        });
    }

    private static string Date(SheetOrder order) => order.Reader.Date(order.Made.Brief.Date);

    /// <summary>The size in which the name stands beside the day; null where it would be too small.</summary>
    private static double? Beside(SheetOrder order)
    {
        var room = SheetSurface.Inner - Typeface.WidthOf(Date(order), DateSize, bold: true) - 14;
        var size = Math.Min(NameSize, NameSize * room / Math.Max(1, Typeface.WidthOf(order.Made.Brief.Site.Name, NameSize, bold: true)));
        return size < LeastName ? null : size;
    }

    public static SheetBlock Origin(SheetOrder order)
    {
        var (made, reader) = (order.Made, order.Reader);
        var text = new SetText(
            $"{PreparedWords.Of(made, order.Now, reader)} {AscentWords.Of(made, order.Now, reader)} {reader.Say($"Local time ({reader.ZoneAt(made.Brief.Date)}); heights above the field.")}",
            SheetSurface.Inner,
            9.5);
        return new(text.Height + 9, (drawing, top) =>
        {
            text.Draw(drawing, SheetSurface.Left, top + 1);
            drawing.Line(SheetSurface.Left, top + text.Height + 5, SheetSurface.Right, top + text.Height + 5, new Stroke(Ink.Black, 1.6));
        });
    }

    public static SheetBlock Banners(SheetOrder order)
    {
        // That it is a draft stands above already, as large.
        var texts = BriefBanners.Of(order.Made, order.Now, order.Reader).Where(banner => banner.Text != order.Reader["Draft: nobody has signed this."])
            .Select(banner => new SetText(banner.Text, SheetSurface.Inner - 16, 14, lead: 1.2, allBold: true)).ToArray();
        return new(texts.Sum(text => text.Height + 11), (drawing, top) =>
        {
            foreach (var text in texts)
            {
                drawing.Rectangle(SheetSurface.Left, top + 2, SheetSurface.Inner, text.Height + 6, new Stroke(Ink.Black, 1.8));
                text.Draw(drawing, SheetSurface.Left + 8, top + 5);
                top += text.Height + 11;
            }
        });
    }
}
