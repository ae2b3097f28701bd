namespace DayBrief.Service.Charts;

/// <summary>The sheet of one plan of centring: what is flown, and as much of the thermal as fits round it.</summary>
internal sealed class CirclePlanPlot
{
    private const double HeadRoom = 22;
    private const double FootRoom = 30;
    private const double LeastSideRoom = 66;
    private const double MostSideRoom = 112;

    private readonly Point _origin;

    public CirclePlanPlot(CirclePlanInput input)
    {
        Input = input;
        Geometry = new(input);
        var (radius, edge) = (input.CircleRadiusM, input.Contours.Max(contour => contour.RadiusM));
        var (centre, after) = (Geometry.Centre, Geometry.NewCentre);
        double Reach(double flown) =>
            Math.Max(flown, edge < 2.2 * radius ? edge : Math.Min(edge, (1.2 * flown) + (0.3 * radius))) + 4;
        var left = Reach(radius - centre.X);
        var right = Reach(Math.Max(after.X + radius, centre.X + radius));
        var up = Reach(Math.Max(radius, after.Y + radius));
        var down = Reach(Math.Max(radius, radius - after.Y));
        // Room at the left for the two names that stand outside the circle there.
        var sideRoom = Math.Clamp(16 + CirclePlanLabels.Outside(input).Max(name => Typeface.WidthOf(name, 11)), LeastSideRoom, MostSideRoom);
        Scale = (input.Width - sideRoom - 4) / (left + right);
        _origin = new(sideRoom + (left * Scale), HeadRoom + (up * Scale));
        Drawing = new(
            input.Width, HeadRoom + ((up + down) * Scale) + FootRoom,
            input.In["Centring, seen from above"], CirclePlanWords.Describe(input, Geometry));
        Frame = new(2, 2, input.Width - 2, Drawing.Height - FootRoom + 8);
        Labels = new(Drawing, Frame);
        if (input.Wind is not null)
            Labels.Keep(new Frame(input.Width - 130, 0, input.Width, 52));
    }

    public CirclePlanInput Input { get; }

    public CirclePlanGeometry Geometry { get; }

    /// <summary>Drawing units for one metre, the same both ways.</summary>
    public double Scale { get; }

    public Drawing Drawing { get; }

    public Frame Frame { get; }

    public LabelRoom Labels { get; }

    public Point At(Point metres) => new(_origin.X + (metres.X * Scale), _origin.Y - (metres.Y * Scale));

    public IReadOnlyList<Point> Ring(Point centre, double radiusM) =>
        [.. Enumerable.Range(0, 73).Select(i => At(new(
            centre.X + (radiusM * Math.Cos(i * Math.PI / 36)),
            centre.Y + (radiusM * Math.Sin(i * Math.PI / 36)))))];

    /// <summary>Draws the part of a line that lies on the sheet: of a broad thermal only the part that is flown in.</summary>
    public void Line(IReadOnlyList<Point> line, Stroke stroke, bool keepClear)
    {
        var top = Input.Wind is null ? 2 : HeadRoom - 4;
        foreach (var piece in (Frame with { Top = top }).Clip(line))
        {
            Drawing.Polyline(piece, stroke);
            if (keepClear)
                Labels.Keep(piece);
        }
    }

    /// <summary>An arrow head at a place, pointing along a heading; its middle on the place.</summary>
    public void Head(Point place, Point heading, Stroke stroke, double size)
    {
        var at = At(place);
        Arrow.Head(
            Drawing, new(at.X + (heading.X * size / 2), at.Y - (heading.Y * size / 2)),
            Math.Atan2(-heading.Y, heading.X), stroke, size);
    }
}
