namespace DayBrief.Service.Charts;

/// <summary>The day in one picture: how high a glider can climb and when, within its likely range, under which cloud.</summary>
internal static class DayPicture
{
    private static readonly Stroke Top = new(Ink.Black, 2.4);
    private static readonly Stroke RangeEdge = new(Ink.Accent, 1.1, (1.5, 2.5));
    private static readonly Stroke RangeHatch = new(Ink.Faint, 0.5);
    private static readonly Stroke Cloud = new(Ink.Grey, 0.7);
    private static readonly Stroke CloudEdge = new(Ink.Grey, 0.8);

    public static Drawing Draw(DayPictureInput input)
    {
        var plot = new DayPicturePlot(input);
        DayPictureAxes.Draw(plot);
        var ranges = Ranges(plot).ToArray();
        foreach (var (low, high) in ranges)
            plot.Drawing.Hatch([.. low, .. high.Reverse()], 4, 90, RangeHatch);
        Clouds(plot);
        // Over the clouds, which would hide them.
        foreach (var (low, high) in ranges)
            Edges(plot, low, high);
        DayPictureAxes.Limits(plot);
        Tops(plot);
        DayPictureLabels.Draw(plot);
        return plot.Drawing;
    }

    private static IEnumerable<(IReadOnlyList<Point> Low, IReadOnlyList<Point> High)> Ranges(DayPicturePlot plot) =>
        plot.Stretches(m => m is { P10M: not null, P90M: not null })
            .Select(stretch => (Line(plot, stretch, m => m.P10M!.Value), Line(plot, stretch, m => m.P90M!.Value)));

    private static void Edges(DayPicturePlot plot, params ReadOnlySpan<IReadOnlyList<Point>> edges)
    {
        foreach (var edge in edges)
        {
            plot.Drawing.Polyline(edge, RangeEdge);
            plot.Labels.Keep(edge);
        }
    }

    private static void Clouds(DayPicturePlot plot)
    {
        foreach (var stretch in plot.Stretches(m => m is { CloudBaseM: not null, CloudTopM: not null }).Where(stretch => stretch.Count > 1))
        {
            var low = Line(plot, stretch, m => m.CloudBaseM!.Value);
            var high = Line(plot, stretch, m => Math.Max(m.CloudTopM!.Value, m.CloudBaseM!.Value));
            plot.Drawing.Polygon([.. low, .. high.Reverse()], fill: Ink.Paper);
            plot.Drawing.Hatch([.. low, .. high.Reverse()], 4.5, 45, Cloud);
            plot.Drawing.Polyline([.. low, .. high.Reverse(), low[0]], CloudEdge);
        }

        foreach (var stretch in plot.Stretches(m => m is { CloudBaseM: not null, CloudTopM: null }))
            plot.Drawing.Polyline(Line(plot, stretch, m => m.CloudBaseM!.Value), CloudEdge);
    }

    private static void Tops(DayPicturePlot plot)
    {
        foreach (var stretch in plot.Stretches(m => m.UsableTopM is not null))
        {
            var line = Line(plot, stretch, m => m.UsableTopM!.Value);
            if (line.Count == 1)
                plot.Drawing.Circle(line[0].X, line[0].Y, 2, fill: Ink.Black);
            plot.Drawing.Polyline(line, Top);
            plot.Labels.Keep(line, 1.6);
        }
    }

    /// <summary>A value over time on the page, kept inside the frame, without the points a straight line passes anyway.</summary>
    private static IReadOnlyList<Point> Line(DayPicturePlot plot, IReadOnlyList<DayMoment> stretch, Func<DayMoment, double> of) =>
        Polylines.Simplify(
            [.. stretch.Select(m => plot.At(m.Time, Math.Clamp(of(m), 0, plot.TopM)))],
            0.25);
}
