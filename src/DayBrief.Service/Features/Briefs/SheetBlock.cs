using DayBrief.Service.Charts;

namespace DayBrief.Service.Features.Briefs;

/// <summary>A part of the sheet, whose height is known before it is drawn.</summary>
/// <param name="Height">What it takes, the space after it included.</param>
/// <param name="Draw">Draws it from a height of the page down.</param>
internal sealed record SheetBlock(double Height, Action<Drawing, double> Draw)
{
    public static SheetBlock None { get; } = new(0, (_, _) => { });

    /// <summary>Texts below each other over the whole width.</summary>
    public static SheetBlock Of(IEnumerable<SetText> texts, double gap = 2, double before = 0, double after = 0)
    {
        var all = texts.ToArray();
        if (all.Length == 0)
            return None;
        return new(before + all.Sum(text => text.Height) + (gap * (all.Length - 1)) + after, (drawing, top) =>
        {
            var y = top + before;
            foreach (var text in all)
            {
                text.Draw(drawing, SheetSurface.Left, y);
                y += text.Height + gap;
            }
        });
    }
}
