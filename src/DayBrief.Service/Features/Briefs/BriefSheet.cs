using DayBrief.Service.Charts;

namespace DayBrief.Service.Features.Briefs;

/// <summary>One upright A4 page for the board at the launch point: what counts legible from a metre, nothing cut off.</summary>
/// <remarks>Blocks are set from the top down and from the bottom up; the picture takes what is left between them.</remarks>
internal static class BriefSheet
{
    private const double WordSize = 11.5;
    private const int MostLines = 6;
    private const double LeastPicture = 110;

    public static Drawing Draw(MadeBrief made, Reader reader, string? address, DateTimeOffset now)
    {
        var brief = made.Brief;
        var sentence = DaySentence.Of(made, reader);
        var sheet = new SheetSurface($"{brief.Site.Name}, {reader.Date(brief.Date)}", $"{sentence} {reader[Advice.Standing]}");
        SheetHead.Draw(sheet, made, reader, now);
        foreach (var banner in BriefBanners.Of(made, now, reader))
            sheet.Banner(banner.Text);
        sheet.Paragraph(sentence, SentenceSize(sentence), bold: true, lead: 1.12);
        Figures(sheet, HeadFigures.Of(made, reader));
        foreach (var line in Words(made, reader))
            sheet.Paragraph(line, WordSize, lead: 1.2);
        var foot = SheetFoot.Draw(sheet, reader, address);
        var room = foot - sheet.Y - LeastPicture - 8;
        var lower = foot - SheetLower.HeightOf(made, reader, room);
        var picture = Math.Clamp(lower - sheet.Y - 8, LeastPicture, 270);
        sheet.Drawing.Place(BriefCharts.Day(made, reader, SheetSurface.Inner, picture), SheetSurface.Left, sheet.Y);
        SheetLower.Draw(sheet, made, reader, Math.Max(lower, sheet.Y + picture + 6), room);
        return sheet.Drawing;
    }

    /// <summary>Limits of the day and what the instructor wrote, as far as the sheet has room: the brief has all of it.</summary>
    private static string[] Words(MadeBrief made, Reader reader)
    {
        var lines = Written(made, reader).SelectMany(text => Typeface.Wrap(text, SheetSurface.Inner, WordSize, bold: false)).ToArray();
        return lines.Length <= MostLines ? lines : [.. lines.Take(MostLines - 1), reader["More from the instructor stands in the brief."]];
    }

    private static IEnumerable<string> Written(MadeBrief made, Reader reader)
    {
        if (made.Inputs.Judgement?.Reason is { } why)
            yield return $"{reader["The instructor's judgement:"]} {why}";
        if (made.Inputs.DayLimits is { } limits)
            yield return $"{reader["Limits of the day"]}: {string.Join("; ", limits.Split('\n', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries))}";
        foreach (var (title, note) in InstructorNotes.Of(made, reader))
            yield return $"{title}: {note.ReplaceLineEndings(" ")}";
    }

    /// <summary>30 pt, or 28 where that saves a line; less only where the sentence would still take more than three.</summary>
    private static double SentenceSize(string sentence)
    {
        int Lines(double size) => Typeface.Wrap(sentence, SheetSurface.Inner, size, bold: true).Count;
        double[] sizes = Lines(28) < Lines(30) ? [28, 25] : [30, 28, 25];
        return sizes.FirstOrDefault(size => Lines(size) <= 3, 22);
    }

    private static void Figures(SheetSurface sheet, IReadOnlyList<HeadFigure> figures)
    {
        var width = SheetSurface.Inner / figures.Count;
        var top = sheet.Y + 16;
        for (var i = 0; i < figures.Count; i++)
        {
            var x = SheetSurface.Left + (i * width);
            sheet.Drawing.Line(x, top, x + width - 10, top, new Stroke(Ink.Black, 1));
            sheet.Drawing.Text(x, top + 14, figures[i].Name, new TextStyle(11) { Ink = Ink.Grey });
            sheet.Drawing.Text(x, top + 43, figures[i].Value, new TextStyle(Fit(figures[i].Value, width - 12, 31)) { Bold = true });
            var lines = Typeface.Wrap(figures[i].Detail, width - 10, 9.5);
            for (var line = 0; line < lines.Count; line++)
                sheet.Drawing.Text(x, top + 57 + (line * 11), lines[line], new TextStyle(9.5) { Ink = Ink.Grey });
        }

        sheet.Y = top + 60 + (11 * figures.Max(figure => Typeface.Wrap(figure.Detail, width - 10, 9.5).Count));
    }

    private static double Fit(string text, double width, double size) =>
        Math.Min(size, size * width / Typeface.WidthOf(text, size, bold: true));
}
