using DayBrief.Service.Charts;
using UglyToad.PdfPig;
using UglyToad.PdfPig.Content;
using UglyToad.PdfPig.Core;

namespace DayBrief.Service.Features.Briefs.Sheet;

/// <summary>A printed page read back by an independent PDF library (PdfPig): its letters with their boxes, put together to texts
/// where one ends and the next begins on the same line.</summary>
internal sealed class PrintedSheet
{
    /// <summary>Boxes of letters may touch by as much as a hair line.</summary>
    private const double Hair = 0.35;

    private PrintedSheet(Page page)
    {
        (Width, Height) = (page.Width, page.Height);
        Texts = [.. Runs(page.Letters)];
    }

    public double Width { get; }

    public double Height { get; }

    public IReadOnlyList<PrintedText> Texts { get; }

    /// <summary>All of it, as one reads it.</summary>
    public string All => string.Join(' ', Texts.Select(text => text.Text));

    public static PrintedSheet Of(Drawing drawing)
    {
        using var pdf = PdfDocument.Open(PdfWriter.Write(drawing.Title, "a test", DateTimeOffset.UnixEpoch, drawing));
        return new(Assert.Single(pdf.GetPages()));
    }

    /// <summary>Every text whose letters lie over those of another.</summary>
    public IEnumerable<string> Overlaps()
    {
        for (var i = 0; i < Texts.Count; i++)
        {
            for (var k = i + 1; k < Texts.Count; k++)
            {
                if (Texts[i].Boxes.Any(one => Texts[k].Boxes.Any(other => Over(one, other))))
                    yield return $"“{Texts[i].Text}” lies over “{Texts[k].Text}”";
            }
        }
    }

    /// <summary>Every text of which something lies outside the margins.</summary>
    public IEnumerable<string> Outside(double margin) =>
        Texts.Where(text => text.Boxes.Any(box => box.Left < margin || box.Right > Width - margin || box.Bottom < margin || box.Top > Height - margin))
            .Select(text => $"“{text.Text}” at {text.Boxes[0].Left:0.0}–{text.Boxes[^1].Right:0.0}, {text.Boxes[0].Bottom:0.0}");

    /// <summary>The sizes in which a passage is set; empty where it is not on the page.</summary>
    public IReadOnlyList<double> SizesOf(string passage)
    {
        static string Tight(string text) => text.Replace(" ", "", StringComparison.Ordinal);
        var (letters, all) = (Texts.SelectMany(text => text.Letters).Where(letter => Tight(letter.Value).Length > 0).ToArray(), "");
        all = string.Concat(letters.Select(letter => Tight(letter.Value)));
        var at = all.IndexOf(Tight(passage), StringComparison.Ordinal);
        return at < 0 ? [] : [.. letters.Skip(at).Take(Tight(passage).Length).Select(letter => letter.PointSize).Distinct()];
    }

    private static bool Over(PdfRectangle a, PdfRectangle b) =>
        a.Left + Hair < b.Right && b.Left + Hair < a.Right && a.Bottom + Hair < b.Top && b.Bottom + Hair < a.Top;

    /// <summary>Letters as they were drawn: a text goes on while the next letter stands where the last one ended.</summary>
    private static IEnumerable<PrintedText> Runs(IReadOnlyList<Letter> letters)
    {
        var run = new List<Letter>();
        foreach (var letter in letters)
        {
            if (run.Count > 0 && !Follows(run[^1], letter))
            {
                yield return new([.. run]);
                run.Clear();
            }

            run.Add(letter);
        }

        if (run.Count > 0)
            yield return new([.. run]);
    }

    private static bool Follows(Letter last, Letter next) =>
        Math.Abs(last.EndBaseLine.X - next.StartBaseLine.X) < 0.6 && Math.Abs(last.EndBaseLine.Y - next.StartBaseLine.Y) < 0.6 && last.PointSize == next.PointSize;
}

/// <summary>One text of a page.</summary>
internal sealed record PrintedText(Letter[] Letters)
{
    public string Text { get; } = string.Concat(Letters.Select(letter => letter.Value)).Trim();

    /// <summary>Boxes of its inked letters.</summary>
    public PdfRectangle[] Boxes { get; } =
        [.. Letters.Where(letter => letter.Value.Trim().Length > 0).Select(letter => letter.BoundingBox)];
}
