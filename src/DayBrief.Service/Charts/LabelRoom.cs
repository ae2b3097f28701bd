namespace DayBrief.Service.Charts;

/// <summary>Keeps labels off each other and off the lines that matter.</summary>
/// <param name="drawing">Where they are drawn.</param>
/// <param name="frame">What they must stay in.</param>
internal sealed class LabelRoom(Drawing drawing, Frame frame)
{
    private readonly List<Frame> _taken = [];

    /// <summary>Keeps labels off a line.</summary>
    public void Keep(IReadOnlyList<Point> line, double halfWidth = 1.1)
    {
        for (var i = 0; i + 1 < line.Count; i++)
        {
            var (a, b) = (line[i], line[i + 1]);
            var steps = Math.Max(1, (int)(Math.Max(Math.Abs(b.X - a.X), Math.Abs(b.Y - a.Y)) / 4));
            for (var k = 0; k <= steps; k++)
            {
                var (x, y) = (a.X + ((b.X - a.X) * k / steps), a.Y + ((b.Y - a.Y) * k / steps));
                Keep(new Frame(x - halfWidth, y - halfWidth, x + halfWidth, y + halfWidth));
            }
        }
    }

    /// <summary>Keeps labels off an area.</summary>
    public void Keep(Frame area) => _taken.Add(area);

    /// <summary>Writes a label at the first of some points where it is free; false when it is nowhere.</summary>
    public bool Place(string text, TextStyle style, params ReadOnlySpan<Point> candidates)
    {
        foreach (var at in candidates)
        {
            if (!IsFree(at, text, style))
                continue;
            Write(at, text, style);
            return true;
        }

        return false;
    }

    /// <summary>Writes a level label beside a point, as near as it is free; false when it is nowhere near.</summary>
    public bool PlaceNear(string text, TextStyle style, Point point, double gap = 6, bool rightFirst = true, int reach = 5)
    {
        var half = Typeface.WidthOf(text, style.Size, style.Bold) / 2;
        var sides = rightFirst ? [1, -1] : new[] { -1, 1 };
        var tries =
            from far in Enumerable.Range(0, reach).Select(i => 6 * i)
            from side in sides
            from up in new[] { 0.0, -0.6, 0.6, -1 - (far / 20.0), 1 + (far / 20.0) }
            select new Point(
                Inward(point.X + (side * (gap + far + half)), half),
                point.Y + (0.33 * style.Size) + (up * style.Size));
        var above = Enumerable.Range(2, reach + 1).Select(i => i % 2 == 0 ? -i / 2 : i / 2).Select(up =>
            new Point(Inward(point.X, half), point.Y + (0.33 * style.Size) + (up * (gap + (0.5 * style.Size)))));
        return Place(text, style with { Anchor = Anchor.Middle }, [.. tries, .. above]);
    }

    /// <summary>Writes a label come what may.</summary>
    public void Write(Point at, string text, TextStyle style)
    {
        _taken.AddRange(Boxes(at, text, style));
        drawing.Text(at.X, at.Y, text, style);
    }

    /// <summary>Whether a label would stand free at a point.</summary>
    public bool IsFree(Point at, string text, TextStyle style)
    {
        var boxes = Boxes(at, text, style);
        return boxes.All(box => box.Left >= frame.Left && box.Right <= frame.Right
                && box.Top >= frame.Top && box.Bottom <= frame.Bottom)
            && !boxes.Any(box => _taken.Any(taken => Overlap(box, taken)));
    }

    /// <summary>Whether a straight line would cross nothing written or kept.</summary>
    public bool IsFree(Point from, Point to) =>
        !_taken.Exists(taken => taken.Clip(from, to) is not null);

    /// <summary>The room of a text as a row of boxes, so that a sloping label takes no more than it needs.</summary>
    internal static Frame[] Boxes(Point at, string text, TextStyle style)
    {
        var width = Typeface.WidthOf(text, style.Size, style.Bold);
        var start = style.Anchor switch { Anchor.Middle => -width / 2, Anchor.End => -width, _ => 0 };
        var level = style.Rotation == 0;
        var count = level ? 1 : Math.Max(1, (int)Math.Ceiling(width / (0.5 * style.Size)));
        var (sin, cos) = Math.SinCos(style.Rotation * Math.PI / 180);
        var (half, rise) = (width / count / 2, -0.33 * style.Size);
        var (wide, tall) = level ? (half + 1, 0.5 * style.Size) : (0.33 * style.Size, 0.33 * style.Size);
        return [.. Enumerable.Range(0, count).Select(i =>
        {
            var along = start + (half * ((2 * i) + 1));
            var (x, y) = (at.X + (along * cos) - (rise * sin), at.Y + (along * sin) + (rise * cos));
            return new Frame(x - wide, y - tall, x + wide, y + tall);
        })];
    }

    private double Inward(double x, double half) =>
        Math.Clamp(x, Math.Min(frame.Left + half + 2, frame.Right - half - 2), frame.Right - half - 2);

    private static bool Overlap(Frame a, Frame b) =>
        a.Left < b.Right && b.Left < a.Right && a.Top < b.Bottom && b.Top < a.Bottom;
}
