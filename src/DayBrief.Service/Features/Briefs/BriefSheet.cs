using DayBrief.Service.Charts;

namespace DayBrief.Service.Features.Briefs;

/// <summary>One upright A4 page for the board at the launch point: what counts legible from a metre, nothing over anything else.</summary>
/// <remarks>Every block knows its height before it is drawn. The first step of <see cref="SheetSqueeze"/> whose blocks fit is
/// taken; what room is left goes to the picture.</remarks>
internal static class BriefSheet
{
    private const double MostPicture = 250;
    private const double Gap = 5;

    public static Drawing Draw(MadeBrief made, Reader reader, string? address, DateTimeOffset now)
    {
        var sheet = new SheetSurface($"{made.Brief.Site.Name}, {reader.Date(made.Brief.Date)}", $"{DaySentence.Of(made, reader)} {reader[Advice.Standing]}");
        var order = new SheetOrder(made, reader, address, now);
        var room = SheetSurface.Bottom - SheetSurface.Top;
        var squeeze = SheetSqueeze.Steps.FirstOrDefault(step => Height(Upper(order, step), Lower(order, step), step) <= room) ?? SheetSqueeze.Steps[^1];
        var (upper, lower) = (Upper(order, squeeze), Lower(order, squeeze));
        var picture = Math.Min(MostPicture, (squeeze.Picture ?? 0) + room - Height(upper, lower, squeeze));
        var y = Stack(sheet.Drawing, upper, SheetSurface.Top);
        if (squeeze.Picture is not null)
            sheet.Drawing.Place(BriefCharts.Day(made, reader, SheetSurface.Inner, picture), SheetSurface.Left, y);
        // The strip and the advice stand at the foot whatever is above them.
        Stack(sheet.Drawing, lower, Math.Max(y + (squeeze.Picture is null ? 0 : picture + Gap), SheetSurface.Bottom - lower.Sum(block => block.Height)));
        return sheet.Drawing;
    }

    private static double Height(IEnumerable<SheetBlock> upper, IEnumerable<SheetBlock> lower, SheetSqueeze squeeze) =>
        upper.Concat(lower).Sum(block => block.Height) + (squeeze.Picture is { } picture ? picture + Gap : 0);

    private static double Stack(Drawing drawing, IEnumerable<SheetBlock> blocks, double y)
    {
        foreach (var block in blocks)
        {
            block.Draw(drawing, y);
            y += block.Height;
        }

        return y;
    }

    private static SheetBlock[] Upper(SheetOrder order, SheetSqueeze squeeze) =>
    [
        SheetHead.Names(order),
        SheetHead.Standing(order),
        SheetHead.Origin(order),
        SheetHead.Banners(order),
        SheetSentence.Sentence(order, squeeze),
        SheetSentence.Figures(order),
        SheetDangers.Worst(order, squeeze),
        SheetDangers.Limits(order),
    ];

    private static SheetBlock[] Lower(SheetOrder order, SheetSqueeze squeeze) =>
    [
        SheetHours.Of(order),
        SheetNotes.Of(order, squeeze),
        SheetLower.Winds(order),
        squeeze.Columns ? SheetLower.Columns(order, squeeze) : SheetLower.Lines(order, squeeze),
        SheetNotes.Reports(order, squeeze),
        SheetNotes.Emergency(order, squeeze),
        SheetFoot.Strip(order, squeeze),
        SheetFoot.Advice(order),
    ];
}

/// <summary>What a sheet is made of.</summary>
/// <param name="Made">The brief.</param>
/// <param name="Reader">Who reads.</param>
/// <param name="Address">Where the live brief is found; null where nobody knows.</param>
/// <param name="Now">When it is printed.</param>
internal sealed record SheetOrder(MadeBrief Made, Reader Reader, string? Address, DateTimeOffset Now);
