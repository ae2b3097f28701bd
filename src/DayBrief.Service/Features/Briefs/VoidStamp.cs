using DayBrief.Service.Charts;

namespace DayBrief.Service.Features.Briefs;

/// <summary>What is printed across a page that nobody is to act on any more: the word, large; large figures struck through;
/// everything but what says so in grey.</summary>
internal static class VoidStamp
{
    /// <summary>From this size on a text is one of the headline's: a sheet is read from a metre away.</summary>
    private const double Large = 20;

    private const double Slope = -32;

    /// <summary>"Withdrawn" or "Replaced"; null for a brief that holds.</summary>
    public static string? Word(MadeBrief made, Reader reader) => made.Standing switch
    {
        { IsReplaced: true } => reader["replaced"].ToUpper(reader.Language.Culture),
        { Withdrawal: not null } => reader["withdrawn"].ToUpper(reader.Language.Culture),
        _ => null,
    };

    /// <summary>A page as it is to be printed now; the page itself while its brief holds.</summary>
    public static Drawing Over(Drawing page, MadeBrief made, DateTimeOffset now, Reader reader)
    {
        if (Word(made, reader) is not { } word)
            return page;
        var banners = string.Join(' ', BriefBanners.Of(made, now, reader).Select(banner => banner.Text));
        var stamped = new Drawing(page.Width, page.Height, page.Title, $"{word}. {page.Description}");
        foreach (var mark in page.Marks)
        {
            var isBanner = mark is TextMark { Style.Bold: true } told && banners.Contains(told.Text, StringComparison.Ordinal);
            stamped.Add(isBanner ? mark : Greyed(mark));
            if (!isBanner && mark is TextMark text && text.Style is { Size: >= Large, Rotation: 0 } && text.Text != made.Brief.Site.Name)
                Strike(stamped, text);
        }

        Stamp(stamped, word);
        return stamped;
    }

    /// <summary>What is laid over a page that was made before and is kept as it is.</summary>
    public static Drawing Alone(MadeBrief made, DateTimeOffset now, Reader reader)
    {
        var word = Word(made, reader) ?? "";
        var sheet = new SheetSurface(made.Brief.Site.Name, word) { Y = 0 };
        var told = BriefBanners.Of(made, now, reader).Where(banner => banner.IsWarning).Select(banner => banner.Text).First();
        var lines = Typeface.Wrap(told, SheetSurface.Inner - 16, 12, bold: true);
        var top = SheetSurface.PageHeight - 14 - (15 * lines.Count);
        sheet.Drawing.Rectangle(SheetSurface.Left, top - 8, SheetSurface.Inner, 14 + (15 * lines.Count), new Stroke(Ink.Warning, 2), Ink.Paper);
        for (var i = 0; i < lines.Count; i++)
            sheet.Drawing.Text(SheetSurface.Left + 8, top + 9 + (15 * i), lines[i], new TextStyle(12) { Bold = true, Ink = Ink.Warning });
        sheet.Drawing.Line(SheetSurface.Left, SheetSurface.PageHeight - 60, SheetSurface.Right, 60, new Stroke(Ink.Warning, 3));
        Stamp(sheet.Drawing, word);
        return sheet.Drawing;
    }

    private static void Stamp(Drawing page, string word)
    {
        var size = Math.Min(92, 92 * 0.8 * page.Width / Typeface.WidthOf(word, 92, bold: true));
        page.Text(page.Width / 2, page.Height / 2, word, new TextStyle(size) { Bold = true, Ink = Ink.Warning, Anchor = Anchor.Middle, Rotation = Slope });
    }

    private static void Strike(Drawing page, TextMark text)
    {
        var width = Typeface.WidthOf(text.Text, text.Style.Size, text.Style.Bold);
        var left = text.At.X - (text.Style.Anchor switch { Anchor.Middle => width / 2, Anchor.End => width, _ => 0 });
        var y = text.At.Y - (0.3 * text.Style.Size);
        page.Line(left, y, left + width, y, new Stroke(Ink.Black, 1.8));
    }

    private static Mark Greyed(Mark mark) => mark switch
    {
        TextMark text => text with { Style = text.Style with { Ink = Grey(text.Style.Ink) } },
        PathMark path => path with { Stroke = Grey(path.Stroke), Fill = path.Fill is { } fill ? Grey(fill) : null },
        CircleMark circle => circle with { Stroke = Grey(circle.Stroke), Fill = circle.Fill is { } fill ? Grey(fill) : null },
        _ => mark,
    };

    private static Stroke? Grey(Stroke? stroke) => stroke is null ? null : stroke with { Ink = Grey(stroke.Ink) };

    private static Ink Grey(Ink ink) => ink is Ink.Paper or Ink.Faint ? ink : Ink.Grey;
}
