using DayBrief.Days;
using DayBrief.Service.Charts;

namespace DayBrief.Service.Features.Briefs;

/// <summary>How much is said of the worst cautions where room is short. The worst three always have a line each.</summary>
internal enum DangerWords
{
    /// <summary>All of the worst three; a line of each other serious one.</summary>
    InFull,

    /// <summary>A line of each.</summary>
    Lines,

    /// <summary>The others follow each other in the same lines.</summary>
    RunOn,

    /// <summary>Of the others name and time.</summary>
    Named,
}

/// <summary>The worst cautions and the limits of the day, to be read by somebody who stands before the board.</summary>
internal static class SheetDangers
{
    /// <summary>Least size of both.</summary>
    public const double Size = 14;

    private const double Lead = 1.16;
    private const double Indent = 9;
    private const double Gap = 2;
    private const double Width = SheetSurface.Inner - Indent;

    /// <summary>The worst three, and every other serious one: each with its time, and what to do of as many as have room.</summary>
    public static SheetBlock Worst(SheetOrder order, SheetSqueeze squeeze)
    {
        var all = SheetCautions.First(order.Made.Brief);
        if (all.Count == 0)
            return SheetBlock.Of([new(order.Reader["The figures give no cause for a special caution. The usual ones stand."], SheetSurface.Inner, Size, lead: Lead)], after: 5);
        var told = Told(order, all, squeeze.Dangers).ToArray();
        return new(told.Sum(text => text.Height) + (Gap * (told.Length - 1)) + 7, (drawing, top) =>
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

    private static IEnumerable<MixedText> Told(SheetOrder order, IReadOnlyList<RankedCaution> all, DangerWords words)
    {
        var worst = words > DangerWords.Lines ? RankedCautions.WorstCount : all.Count;
        foreach (var (caution, i) in all.Take(worst).Select((caution, i) => (caution, i)))
            yield return Set(words == DangerWords.InFull && i < RankedCautions.WorstCount ? InFull(order, caution) : Line(order, caution, "."));
        var others = all.Skip(worst).ToArray();
        if (others.Length == 0)
            yield break;
        yield return Set(words == DangerWords.RunOn
            ? others.SelectMany((caution, i) => Line(order, caution, i < others.Length - 1 ? ";" : "."))
            : others.SelectMany((caution, i) => Name(order, caution, i < others.Length - 1 ? ";" : ".")));
    }

    private static MixedText Set(IEnumerable<(string Text, bool Bold)> parts) => new(parts, Width, Size, Lead);

    private static (string Text, bool Bold)[] InFull(SheetOrder order, RankedCaution caution) =>
        [($"{HazardText.Title(caution.Kind, order.Reader)}.", true), (HazardText.Of(caution.Lead, order.Made.Brief.Site, order.Reader), false)];

    private static (string Text, bool Bold)[] Line(SheetOrder order, RankedCaution caution, string stop)
    {
        var line = CautionLine.Of(caution, order.Reader);
        return [(line.Title, true), ($"{line.Time}: {line.Text}{stop}", false)];
    }

    private static (string Text, bool Bold)[] Name(SheetOrder order, RankedCaution caution, string stop)
    {
        var line = CautionLine.Of(caution, order.Reader);
        return [(line.Title, true), ($"{line.Time}{stop}", false)];
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
