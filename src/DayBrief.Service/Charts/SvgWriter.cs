using System.Globalization;
using System.Net;
using System.Text;

namespace DayBrief.Service.Charts;

/// <summary>Writes a drawing as accessible SVG: a titled image with a text alternative, its tones left to the page.</summary>
internal static class SvgWriter
{
    public static string Write(Drawing drawing, string id)
    {
        var svg = new StringBuilder();
        svg.Append(CultureInfo.InvariantCulture, $"<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 {N(drawing.Width)} {N(drawing.Height)}\" role=\"img\" aria-labelledby=\"{id}-t {id}-d\" class=\"drawing\">");
        svg.Append(CultureInfo.InvariantCulture, $"<title id=\"{id}-t\">{E(drawing.Title)}</title><desc id=\"{id}-d\">{E(drawing.Description)}</desc>");
        for (var i = 0; i < drawing.Marks.Count; i++)
        {
            if (drawing.Marks[i] is PathMark path)
                i = AppendPaths(svg, drawing.Marks, i, path);
            else
                Append(svg, drawing.Marks[i]);
        }

        return svg.Append("</svg>").ToString();
    }

    private static void Append(StringBuilder svg, Mark mark)
    {
        switch (mark)
        {
            case CircleMark circle:
                svg.Append(CultureInfo.InvariantCulture, $"<circle cx=\"{N(circle.Centre.X)}\" cy=\"{N(circle.Centre.Y)}\" r=\"{N(circle.Radius)}\"{Look(circle.Stroke, circle.Fill)}/>");
                break;
            case TextMark text:
                AppendText(svg, text);
                break;
        }
    }

    /// <summary>Writes a path together with those right after it that look the same: a hatched area is one element.</summary>
    /// <returns>Index of the last one written.</returns>
    private static int AppendPaths(StringBuilder svg, IReadOnlyList<Mark> marks, int first, PathMark path)
    {
        svg.Append("<path d=\"").Append(Data(path));
        var last = first;
        while (last + 1 < marks.Count
            && (path.Fill is null || path.Stroke is null)
            && marks[last + 1] is PathMark next
            && (next.Stroke, next.Fill) == (path.Stroke, path.Fill))
        {
            svg.Append(Data(next));
            last++;
        }

        svg.Append('"').Append(Look(path.Stroke, path.Fill)).Append("/>");
        return last;
    }

    private static string Data(PathMark path)
    {
        var data = new StringBuilder();
        for (var i = 0; i < path.Points.Count; i++)
            data.Append(i == 0 ? 'M' : i == 1 ? 'L' : ' ').Append(N(path.Points[i].X)).Append(' ').Append(N(path.Points[i].Y));
        return path.Closed ? data.Append('Z').ToString() : data.ToString();
    }

    private static void AppendText(StringBuilder svg, TextMark text)
    {
        var (x, y, style) = (N(text.At.X), N(text.At.Y), text.Style);
        svg.Append(CultureInfo.InvariantCulture, $"<text x=\"{x}\" y=\"{y}\" font-size=\"{N(style.Size)}\" fill=\"{Tone(style.Ink)}\"");
        if (style.Bold)
            svg.Append(" font-weight=\"600\"");
        if (style.Anchor != Anchor.Start)
            svg.Append(style.Anchor == Anchor.Middle ? " text-anchor=\"middle\"" : " text-anchor=\"end\"");
        if (style.Rotation != 0)
            svg.Append(CultureInfo.InvariantCulture, $" transform=\"rotate({N(style.Rotation)} {x} {y})\"");
        if (style.Halo)
            svg.Append(CultureInfo.InvariantCulture, $" stroke=\"{Tone(Ink.Paper)}\" stroke-width=\"{N(style.Size / 4)}\" stroke-linejoin=\"round\" paint-order=\"stroke\"");
        svg.Append('>').Append(E(text.Text)).Append("</text>");
    }

    private static string Look(Stroke? stroke, Ink? fill)
    {
        var look = $" fill=\"{(fill is { } ink ? Tone(ink) : "none")}\"";
        if (stroke is null)
            return look;
        look += $" stroke=\"{Tone(stroke.Ink)}\" stroke-width=\"{N(stroke.Width)}\"";
        return stroke.Dash is { } dash ? $"{look} stroke-dasharray=\"{N(dash.On)} {N(dash.Off)}\"" : look;
    }

    private static string Tone(Ink ink) => ink switch
    {
        Ink.Black => "var(--ink,#111)",
        Ink.Grey => "var(--soft,#555)",
        Ink.Faint => "var(--faint,#bbb)",
        Ink.Accent => "var(--accent,#1d4f6e)",
        Ink.Warning => "var(--warning,#9a2f10)",
        _ => "var(--paper,#fff)",
    };

    private static string N(double value) => value.ToString("0.##", CultureInfo.InvariantCulture);

    private static string E(string text) => WebUtility.HtmlEncode(text);
}
