namespace DayBrief.Service.Charts;

/// <summary>Centring from above, to scale: the thermal, the circle, where the air is weakest, where that is felt, where to
/// roll out, and the circle after the move.</summary>
internal static class CirclePlan
{
    private static readonly Stroke Edge = new(Ink.Grey, 1.1, (7, 4));
    private static readonly Stroke Contour = new(Ink.Grey, 0.7, (2, 2.5));
    private static readonly Stroke First = new(Ink.Black, 1.1);
    private static readonly Stroke Move = new(Ink.Accent, 2.4);

    public static Drawing Draw(CirclePlanInput input)
    {
        var plot = new CirclePlanPlot(input);
        Thermal(plot);
        Circles(plot);
        Lag(plot);
        CirclePlanLabels.Draw(plot);
        ScaleBar(plot);
        WindArrow(plot);
        return plot.Drawing;
    }

    private static void Thermal(CirclePlanPlot plot)
    {
        var edge = plot.Input.Contours.Max(contour => contour.RadiusM);
        foreach (var contour in plot.Input.Contours)
        {
            var ring = plot.Ring(new(0, 0), contour.RadiusM);
            plot.Line(ring, contour.RadiusM == edge ? Edge : Contour, keepClear: contour.RadiusM == edge);
        }

        var core = plot.At(new(0, 0));
        plot.Drawing.Line(core.X - 5, core.Y, core.X + 5, core.Y, Stroke.Main);
        plot.Drawing.Line(core.X, core.Y - 5, core.X, core.Y + 5, Stroke.Main);
        plot.Labels.Keep(new Frame(core.X - 6, core.Y - 6, core.X + 6, core.Y + 6));
    }

    private static void Circles(CirclePlanPlot plot)
    {
        var (input, geometry) = (plot.Input, plot.Geometry);
        plot.Line(plot.Ring(geometry.Centre, input.CircleRadiusM), First, keepClear: true);
        plot.Line(plot.Ring(geometry.NewCentre, input.CircleRadiusM), Move, keepClear: true);
        var (from, to) = geometry.Straight;
        var begin = input.LagDeg + input.RollOutAfterDeg;
        IReadOnlyList<Point> path =
            [.. geometry.Arc(begin, input.StraightAfterDeg, input.CircleRadiusM).Select(plot.At), plot.At(from), plot.At(to)];
        plot.Line(path, Move, keepClear: true);
        var middle = new Point((from.X + to.X) / 2, (from.Y + to.Y) / 2);
        plot.Head(middle, geometry.Heading(input.StraightAfterDeg), Move, 9);
        foreach (var turn in new[] { -100.0, 200 })
            plot.Head(geometry.OnCircle(turn), geometry.Heading(turn), First, 7);
    }

    /// <summary>The arc outside the circle from the weakest air to where it is felt, and the three marks.</summary>
    private static void Lag(CirclePlanPlot plot)
    {
        var (input, geometry) = (plot.Input, plot.Geometry);
        var outside = input.CircleRadiusM + (8 / plot.Scale);
        var arc = geometry.Arc(0, input.LagDeg, outside).Select(plot.At).ToArray();
        plot.Line(arc, new Stroke(Ink.Black, 1), keepClear: true);
        plot.Head(geometry.OnCircle(input.LagDeg, outside), geometry.Heading(input.LagDeg), First, 5);
        var weakest = plot.At(geometry.OnCircle(0));
        plot.Drawing.Circle(weakest.X, weakest.Y, 3.6, new Stroke(Ink.Black, 1.4), Ink.Paper);
        var felt = plot.At(geometry.OnCircle(input.LagDeg));
        plot.Drawing.Circle(felt.X, felt.Y, 3.6, fill: Ink.Black);
        var out3 = plot.At(geometry.OnCircle(input.LagDeg + input.RollOutAfterDeg));
        plot.Drawing.Rectangle(out3.X - 3.4, out3.Y - 3.4, 6.8, 6.8, fill: Ink.Accent);
    }

    private static void ScaleBar(CirclePlanPlot plot)
    {
        var unit = plot.Input.Unit;
        var most = unit.FromMetres(90 / plot.Scale);
        var length = Math.Pow(10, Math.Floor(Math.Log10(most)));
        length *= most / length >= 5 ? 5 : most / length >= 2 ? 2 : 1;
        var (x, y, wide) = (8.0, plot.Drawing.Height - 8, unit.ToMetres(length) * plot.Scale);
        plot.Drawing.Polyline([new(x, y - 5), new(x, y), new(x + wide, y), new(x + wide, y - 5)], new Stroke(Ink.Black, 1.2));
        plot.Drawing.Text(x + wide + 5, y + 1, $"{length.ToString("N0", plot.Input.Language.Culture)} {unit.Name()}", new TextStyle(TextStyle.Least));
    }

    private static void WindArrow(CirclePlanPlot plot)
    {
        if (plot.Input.Wind is not { } wind)
            return;
        var text = plot.Input.In.Say($"wind {WindByHeight.Say(wind, plot.Input.In)}, north up");
        plot.Drawing.Text(plot.Drawing.Width - 8, 14, text, new TextStyle(TextStyle.Least) { Anchor = Anchor.End });
        if (WindBarb.Feathers(wind.Speed.Knots) == (0, 0, 0))
            return;
        var (sin, cos) = Math.SinCos(wind.FromDegrees * Math.PI / 180);
        var middle = new Point(plot.Drawing.Width - 26, 36);
        Arrow.Draw(
            plot.Drawing,
            new(middle.X + (14 * sin), middle.Y - (14 * cos)),
            new(middle.X - (14 * sin), middle.Y + (14 * cos)),
            new Stroke(Ink.Black, 1.6), 8);
    }
}
