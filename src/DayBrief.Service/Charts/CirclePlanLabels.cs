namespace DayBrief.Service.Charts;

/// <summary>The names on the plan of centring.</summary>
internal static class CirclePlanLabels
{
    private static readonly TextStyle Plain = new(TextStyle.Least) { Halo = true };

    public static void Draw(CirclePlanPlot plot)
    {
        var (input, geometry, say) = (plot.Input, plot.Geometry, plot.Input.In);
        var seconds = input.Seconds;
        var outside = input.CircleRadiusM + (10 / plot.Scale);
        var begin = input.LagDeg + input.RollOutAfterDeg;
        var names = Outside(input);
        Near(plot, geometry.OnCircle(0, outside), names[0], Plain, right: false);
        Near(plot, geometry.OnCircle(input.LagDeg, outside), names[1], Plain, right: false);
        var side = input.TurnsRight ? -1 : 1;
        Aside(plot, geometry.OnCircle(begin), side, seconds is { } wait ? say.Say($"roll out {wait.Wait:0.0} s after") : say["roll out"], Plain with { Bold = true, Ink = Ink.Accent });
        var (from, to) = geometry.Straight;
        if (seconds is { } level)
            Aside(plot, new((from.X + to.X) / 2, (from.Y + to.Y) / 2), -side, level.Level < 0.05 ? say["and back at once"] : say.Say($"level {level.Level:0.0} s"), Plain with { Ink = Ink.Accent });
        string[] core = input.CoreMs is { } updraft ? [say.Say($"core {say.Vertical(updraft)}"), say.Vertical(updraft), say["core"]] : [say["core"]];
        _ = Array.Exists(core, name => Near(plot, new(0, 0), name, Plain with { Bold = true }, right: true));
        var edge = input.Contours.MaxBy(contour => contour.RadiusM)!;
        foreach (var contour in input.Contours.Where(contour => contour != edge))
            Along(plot, contour.RadiusM, say.Vertical(contour.UpdraftMs), 0, 0);
        var (first, later) = (geometry.Centre, geometry.NewCentre);
        Near(plot, new(first.X - (0.6 * input.CircleRadiusM), side * 0.8 * input.CircleRadiusM), say["circle now"], Plain, right: false);
        Near(plot, new(later.X + (0.6 * input.CircleRadiusM), later.Y + (side * 0.8 * input.CircleRadiusM)), say["circle after"], Plain with { Bold = true, Ink = Ink.Accent }, right: true);
        Along(plot, edge.RadiusM, edge.UpdraftMs < 0.05 ? say["edge of the lift"] : say.Say($"edge, {say.Vertical(edge.UpdraftMs)}"), 12, 72);
    }

    /// <summary>The names outside the circle: where the air is weakest, and where that is felt.</summary>
    internal static IReadOnlyList<string> Outside(CirclePlanInput input) =>
    [
        input.In["weakest air"],
        input.Seconds is { } seconds ? input.In.Say($"felt {seconds.Lag:0.0} s later") : input.In["felt here"],
    ];

    private static bool Near(CirclePlanPlot plot, Point place, string text, TextStyle style, bool right) =>
        plot.Labels.PlaceNear(text, style, plot.At(place), gap: 6, rightFirst: right);

    /// <summary>Below a place or above it, moved to the left or right until there is room.</summary>
    private static void Aside(CirclePlanPlot plot, Point place, int down, string text, TextStyle style)
    {
        var at = plot.At(place);
        plot.Labels.Place(
            text, style with { Anchor = Anchor.Middle },
            [.. from away in Enumerable.Range(0, 4)
                from across in Enumerable.Range(0, 9).Select(i => 8 * (i % 2 == 0 ? -i / 2 : (i + 1) / 2))
                from side in new[] { down, -down }
                select new Point(at.X + across, at.Y + 4 + (side * (13 + (5 * away))))]);
    }

    /// <summary>On a contour or inside it, where it is free, from the upper right on.</summary>
    private static void Along(CirclePlanPlot plot, double radiusM, string text, int nearest, int farthest)
    {
        var style = Plain with { Ink = Ink.Grey, Anchor = Anchor.Middle };
        for (var inward = nearest; inward <= farthest; inward += 6)
        {
            for (var degrees = 60; degrees > -300; degrees -= 6)
            {
                var (sin, cos) = Math.SinCos(degrees * Math.PI / 180);
                var at = plot.At(new((radiusM - (inward / plot.Scale)) * cos, (radiusM - (inward / plot.Scale)) * sin));
                if (plot.Labels.Place(text, style, at with { Y = at.Y + 4 }))
                    return;
            }
        }
    }
}
