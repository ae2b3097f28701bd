using DayBrief.Service.Charts;

namespace DayBrief.Service.Features.Briefs;

/// <summary>The day in one sentence and its four figures, legible from a metre.</summary>
internal static class SheetSentence
{
    /// <summary>Least size of what is read from a metre.</summary>
    public const double Least = 28;

    private const double DetailSize = 10;
    private const double Gap = 10;

    /// <summary>30 pt where that takes no more lines than 28.</summary>
    public static SheetBlock Sentence(SheetOrder order, SheetSqueeze squeeze)
    {
        SetText Set(double size) => new(DaySentence.Of(order.Made, order.Reader, squeeze.Clauses), SheetSurface.Inner, size, lead: 1.1, allBold: true);
        var (large, least) = (Set(30), Set(Least));
        return SheetBlock.Of([large.Lines <= Math.Min(2, least.Lines) ? large : least], after: 4);
    }

    public static SheetBlock Figures(SheetOrder order)
    {
        var figures = HeadFigures.Of(order.Made, order.Reader);
        var (size, widths) = Columns(figures);
        var details = figures.Select((figure, i) => new SetText(figure.Detail, widths[i] - Gap, DetailSize, lead: 1.12)).ToArray();
        var height = 14 + (1.12 * size) + details.Max(detail => detail.Height) + 6;
        return new(height, (drawing, top) =>
        {
            var x = SheetSurface.Left;
            for (var i = 0; i < figures.Count; i++)
            {
                drawing.Line(x, top, x + widths[i] - Gap, top, new Stroke(Ink.Black, 1));
                drawing.Text(x, top + 12, figures[i].Name, new TextStyle(11) { Ink = Ink.Grey });
                drawing.Text(x, top + 14 + (0.85 * size), figures[i].Value, new TextStyle(size) { Bold = true });
                details[i].Draw(drawing, x, top + 14 + (1.12 * size), Ink.Grey);
                x += widths[i];
            }
        });
    }

    /// <summary>As wide as each value needs, the rest so that the details take few lines; smaller only where four values would
    /// not fit at the least size.</summary>
    private static (double Size, double[] Widths) Columns(IReadOnlyList<HeadFigure> figures)
    {
        foreach (var size in new[] { 31, 30, 29, Least, 26, 24, 20 })
        {
            var needed = figures.Select(figure => Gap + Math.Max(62, Typeface.WidthOf(figure.Value, size, bold: true))).ToArray();
            var left = SheetSurface.Inner - needed.Sum();
            if (left < 0)
                continue;
            // Two lines of detail, broken where a long word may end up on either.
            var more = figures.Select((figure, i) => Math.Max(0, Gap + 22 + (Typeface.WidthOf(figure.Detail, DetailSize) / 2) - needed[i])).ToArray();
            var share = more.Sum() is > 0 and var sum ? Math.Min(1, left / sum) : 0;
            var rest = (left - (share * more.Sum())) / needed.Length;
            return (size, [.. needed.Select((width, i) => width + (share * more[i]) + rest)]);
        }

        return (16, [.. figures.Select(_ => SheetSurface.Inner / figures.Count)]);
    }
}
