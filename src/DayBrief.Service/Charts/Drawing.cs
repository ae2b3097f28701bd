namespace DayBrief.Service.Charts;

/// <summary>A picture made of computed geometry. Drawn once; SVG page, printed sheet and PDF all come from it.</summary>
/// <param name="width">Width in drawing units (points on paper, CSS pixels on a phone).</param>
/// <param name="height">Height in the same units.</param>
/// <param name="title">Its name, for those who hear it.</param>
/// <param name="description">What it shows, in words with figures, for those who cannot see it.</param>
internal sealed class Drawing(double width, double height, string title, string description)
{
    private readonly List<Mark> _marks = [];

    public double Width => width;

    public double Height => height;

    public string Title => title;

    public string Description => description;

    public IReadOnlyList<Mark> Marks => _marks;

    public void Line(double x1, double y1, double x2, double y2, Stroke stroke) =>
        _marks.Add(new PathMark([new(x1, y1), new(x2, y2)], Closed: false, stroke, Fill: null));

    public void Polyline(IReadOnlyList<Point> points, Stroke stroke) =>
        _marks.Add(new PathMark(points, Closed: false, stroke, Fill: null));

    public void Polygon(IReadOnlyList<Point> points, Stroke? stroke = null, Ink? fill = null) =>
        _marks.Add(new PathMark(points, Closed: true, stroke, fill));

    public void Rectangle(double x, double y, double w, double h, Stroke? stroke = null, Ink? fill = null) =>
        Polygon([new(x, y), new(x + w, y), new(x + w, y + h), new(x, y + h)], stroke, fill);

    public void Circle(double x, double y, double radius, Stroke? stroke = null, Ink? fill = null) =>
        _marks.Add(new CircleMark(new(x, y), radius, stroke, fill));

    public void Text(double x, double y, string text, TextStyle style) =>
        _marks.Add(new TextMark(new(x, y), text, style));

    /// <summary>One thing of another drawing.</summary>
    public void Add(Mark mark) => _marks.Add(mark);

    /// <summary>Fills a polygon with parallel lines, which a photocopy keeps.</summary>
    /// <param name="points">The polygon.</param>
    /// <param name="spacing">Distance between the lines.</param>
    /// <param name="degrees">Their slope: 0 lies level, 45 rises to the right.</param>
    /// <param name="stroke">How they are drawn.</param>
    public void Hatch(IReadOnlyList<Point> points, double spacing, double degrees, Stroke stroke)
    {
        foreach (var (from, to) in Hatching.Lines(points, spacing, degrees))
            Line(from.X, from.Y, to.X, to.Y, stroke);
    }

    /// <summary>Places another drawing with its top left corner at a point, scaled.</summary>
    public void Place(Drawing other, double x, double y, double scale = 1)
    {
        Point Move(Point p) => new(x + (p.X * scale), y + (p.Y * scale));
        Stroke? Thick(Stroke? s) => s is null
            ? null
            : s with { Width = s.Width * scale, Dash = s.Dash is { } d ? (d.On * scale, d.Off * scale) : null };
        foreach (var mark in other._marks)
        {
            _marks.Add(mark switch
            {
                PathMark path => path with { Points = [.. path.Points.Select(Move)], Stroke = Thick(path.Stroke) },
                CircleMark circle => circle with
                {
                    Centre = Move(circle.Centre),
                    Radius = circle.Radius * scale,
                    Stroke = Thick(circle.Stroke),
                },
                TextMark text => text with
                {
                    At = Move(text.At),
                    Style = text.Style with { Size = text.Style.Size * scale },
                },
                _ => throw new InvalidOperationException($"A {mark.GetType().Name} cannot be placed."),
            });
        }
    }
}
