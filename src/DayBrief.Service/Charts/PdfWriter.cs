using PdfSharp.Drawing;
using PdfSharp.Pdf;
using PdfSharp.Pdf.IO;

namespace DayBrief.Service.Charts;

/// <summary>Writes drawings as PDF, a page each: vector lines, selectable text, fonts embedded.</summary>
internal static class PdfWriter
{
    public static byte[] Write(string title, string author, DateTimeOffset? created, params IReadOnlyList<Drawing> pages)
    {
        Typeface.Register();
        using var document = new PdfDocument();
        document.Info.Title = title;
        document.Info.Author = author;
        document.Info.Creator = "DayBrief";
        if (created is { } moment)
            document.Info.CreationDate = moment.UtcDateTime;
        foreach (var drawing in pages)
        {
            var page = document.AddPage();
            page.Width = XUnit.FromPoint(drawing.Width);
            page.Height = XUnit.FromPoint(drawing.Height);
            using var graphics = XGraphics.FromPdfPage(page);
            foreach (var mark in drawing.Marks)
                Draw(graphics, mark);
        }

        using var stream = new MemoryStream();
        document.Save(stream);
        return stream.ToArray();
    }

    /// <summary>A PDF that was written before, with a drawing over each of its pages.</summary>
    public static byte[] Over(byte[] pdf, Drawing overlay)
    {
        Typeface.Register();
        using var document = PdfReader.Open(new MemoryStream(pdf), PdfDocumentOpenMode.Modify);
        foreach (var page in document.Pages)
        {
            using var graphics = XGraphics.FromPdfPage(page, XGraphicsPdfPageOptions.Append);
            foreach (var mark in overlay.Marks)
                Draw(graphics, mark);
        }

        using var stream = new MemoryStream();
        document.Save(stream);
        return stream.ToArray();
    }

    private static void Draw(XGraphics graphics, Mark mark)
    {
        switch (mark)
        {
            case PathMark path:
                DrawPath(graphics, path);
                break;
            case CircleMark circle:
                var (c, r) = (circle.Centre, circle.Radius);
                if (circle.Fill is { } fill)
                    graphics.DrawEllipse(Brush(fill), c.X - r, c.Y - r, 2 * r, 2 * r);
                if (circle.Stroke is { } stroke)
                    graphics.DrawEllipse(Pen(stroke), c.X - r, c.Y - r, 2 * r, 2 * r);
                break;
            case TextMark text:
                DrawText(graphics, text);
                break;
        }
    }

    private static void DrawPath(XGraphics graphics, PathMark path)
    {
        var points = path.Points.Select(p => new XPoint(p.X, p.Y)).ToArray();
        if (points.Length < 2)
            return;
        if (path.Closed && path.Fill is { } fill)
            graphics.DrawPolygon(Brush(fill), points, XFillMode.Alternate);
        if (path.Stroke is not { } stroke)
            return;
        if (path.Closed)
            graphics.DrawPolygon(Pen(stroke), points);
        else
            graphics.DrawLines(Pen(stroke), points);
    }

    private static void DrawText(XGraphics graphics, TextMark text)
    {
        var style = text.Style;
        var font = Typeface.Font(style.Size, style.Bold);
        var state = graphics.Save();
        if (style.Rotation != 0)
            graphics.RotateAtTransform(style.Rotation, new XPoint(text.At.X, text.At.Y));
        var width = graphics.MeasureString(text.Text, font).Width;
        var x = text.At.X - (style.Anchor switch { Anchor.Middle => width / 2, Anchor.End => width, _ => 0 });
        if (style.Halo)
            graphics.DrawRectangle(Brush(Ink.Paper), x - 1, text.At.Y - (0.75 * style.Size), width + 2, 0.95 * style.Size);
        graphics.DrawString(text.Text, font, Brush(style.Ink), x, text.At.Y);
        graphics.Restore(state);
    }

    private static XPen Pen(Stroke stroke)
    {
        var pen = new XPen(Colour(stroke.Ink), stroke.Width) { LineJoin = XLineJoin.Round };
        if (stroke.Dash is { } dash)
            pen.DashPattern = [dash.On / stroke.Width, dash.Off / stroke.Width];
        return pen;
    }

    private static XSolidBrush Brush(Ink ink) => new(Colour(ink));

    /// <summary>Paper is grey-scale safe: the warning tone prints as dark as black ink.</summary>
    private static XColor Colour(Ink ink) => ink switch
    {
        Ink.Black => XColor.FromGrayScale(0.05),
        Ink.Grey => XColor.FromGrayScale(0.3),
        Ink.Faint => XColor.FromGrayScale(0.7),
        Ink.Accent => XColor.FromArgb(0x1d, 0x4f, 0x6e),
        Ink.Warning => XColor.FromArgb(0x9a, 0x2f, 0x10),
        _ => XColors.White,
    };
}
