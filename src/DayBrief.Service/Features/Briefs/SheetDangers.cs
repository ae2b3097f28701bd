using DayBrief.Days;
using DayBrief.Service.Charts;

namespace DayBrief.Service.Features.Briefs;

/// <summary>The worst cautions and the limits of the day, to be read by somebody who stands before the board.</summary>
internal static class SheetDangers
{
    /// <summary>Least size of both.</summary>
    public const double Size = 14;

    private const double Lead = 1.16;
    private const double Indent = 9;
    private const double Gap = 2;

    /// <summary>The worst three, and every other serious one: each with its time and what to do, never its name alone.</summary>
    public static SheetBlock Worst(SheetOrder order, SheetSqueeze squeeze)
    {
        var told = SheetCautions.First(order.Made.Brief).Select((caution, i) => Told(order, caution, i < RankedCautions.WorstCount && squeeze.DangersInFull)).ToArray();
        if (told.Length == 0)
            return SheetBlock.Of([new(order.Reader["The figures give no cause for a special caution. The usual ones stand."], SheetSurface.Inner, Size, lead: Lead)], after: 5);
        return new(told.Sum(text => text.Height) + (Gap * (told.Length - 1)) + 9, (drawing, top) =>
        {
            var y = top + 2;
            foreach (var text in told)
            {
                text.Draw(drawing, SheetSurface.Left + Indent, y);
                y += text.Height + Gap;
            }

            drawing.Rectangle(SheetSurface.Left, top + 3, 3, y - top - 5, fill: Ink.Black);
        });
    }

    private static SetText Told(SheetOrder order, RankedCaution caution, bool inFull)
    {
        var (line, site) = (CautionLine.Of(caution, order.Reader), order.Made.Brief.Site);
        return inFull
            ? new(HazardText.Of(caution.Lead, site, order.Reader), SheetSurface.Inner - Indent, Size, $"{line.Title}.", Lead)
            : new($"{line.Time}: {line.Text}.", SheetSurface.Inner - Indent, Size, line.Title, Lead);
    }

    /// <summary>All of them, whatever they take.</summary>
    public static SheetBlock Limits(SheetOrder order) => order.Made.Inputs.DayLimits is { Length: > 0 } limits
        ? SheetBlock.Of(
            [new(
                string.Join("; ", limits.Split('\n', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries)),
                SheetSurface.Inner, Size, $"{order.Reader["Limits of the day"]}:", Lead)],
            after: 5)
        : SheetBlock.None;
}
