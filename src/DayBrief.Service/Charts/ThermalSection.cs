namespace DayBrief.Service.Charts;

/// <summary>The thermal from the side: its width and lean by height, air drawn in below and pushed out above, the usable
/// heights, the cloud.</summary>
internal static class ThermalSection
{
    private static readonly TextStyle Small = new(TextStyle.Least) { Ink = Ink.Grey };
    private static readonly TextStyle Name = new(TextStyle.Least) { Halo = true };
    private static readonly Stroke Outline = new(Ink.Black, 2);
    private static readonly Stroke Axis = new(Ink.Grey, 0.8, (5, 3));
    private static readonly Stroke Flow = new(Ink.Accent, 1.3);
    private static readonly double[] UpdraftShares = [0.15, 0.4, 0.65, 0.88];
    private static readonly Stroke Bound = new(Ink.Black, 1, (1.5, 2.5));

    public static Drawing Draw(ThermalSectionInput input)
    {
        var plot = new ThermalSectionPlot(input);
        Heights(plot);
        Body(plot);
        Updrafts(plot);
        Usable(plot);
        Cloud(plot);
        Flows(plot);
        Below(plot);
        Drift(plot);
        return plot.Drawing;
    }

    private static void Heights(ThermalSectionPlot plot)
    {
        var (frame, unit) = (plot.Frame, plot.Input.Unit);
        plot.Drawing.Text(
            2, 12, plot.Input.Time is { } time ? plot.Input.In.Say($"{unit.Name()} above the field, at {time:HH:mm}") : plot.Input.In.Say($"{unit.Name()} above the field"), Small);
        foreach (var metres in unit.Ticks(plot.TopM, 6))
        {
            var y = plot.Y(metres);
            plot.Drawing.Line(frame.Left, y, frame.Left - 4, y, Stroke.Fine);
            plot.Drawing.Text(frame.Left - 7, y + 3.5, unit.FromMetres(metres).ToString("N0", plot.Input.Language.Culture), Small with { Anchor = Anchor.End });
        }

        plot.Drawing.Line(frame.Left, frame.Top, frame.Left, frame.Bottom, Stroke.Fine);
        plot.Drawing.Line(frame.Left, frame.Bottom, frame.Right, frame.Bottom, new Stroke(Ink.Black, 1.2));
        plot.Drawing.Hatch(
            [new(frame.Left, frame.Bottom), new(frame.Right, frame.Bottom), new(frame.Right, frame.Bottom + 5), new(frame.Left, frame.Bottom + 5)],
            3, 45, new Stroke(Ink.Grey, 0.4));
        plot.Drawing.Text(
            frame.Right, 12, Math.Abs(plot.Exaggeration - 1) < 0.05 ? plot.Input.In["widths to scale"] : plot.Input.In.Say($"widths drawn × {plot.Exaggeration:0.#}"), Small with { Anchor = Anchor.End });
    }

    /// <summary>A cloud over the thermal's head: a flat base where it condenses, hatched, open above.</summary>
    private static void Cloud(ThermalSectionPlot plot)
    {
        if (plot.Input.CloudBaseM is not { } metres)
            return;
        var head = plot.At(metres);
        var (left, right, y) = (plot.Edge(head, -1).X - 14, plot.Edge(head, 1).X + 14, plot.Y(metres));
        var high = Math.Max(plot.Frame.Top + 2, y - 30);
        Point[] cloud = [new(left, y), new(right, y), new(right - 10, (y + high) / 2), new(right - 26, high), new(left + 26, high), new(left + 10, (y + high) / 2)];
        plot.Drawing.Hatch(cloud, 4.5, 45, new Stroke(Ink.Grey, 0.7));
        plot.Drawing.Line(left, y, right, y, new Stroke(Ink.Black, 1.6));
        plot.Labels.Keep(cloud);
        var roomRight = plot.Frame.Right - right > left - plot.Frame.Left;
        plot.Labels.PlaceNear(
            plot.Input.In.Say($"cloud base {plot.Input.In.Text(metres)}"), Name with { Bold = true },
            new(roomRight ? right : left, y), gap: 4, rightFirst: roomRight);
    }

    private static void Body(ThermalSectionPlot plot)
    {
        foreach (var (side, stroke) in new[] { (-1, Outline), (1, Outline), (0, Axis) })
        {
            Point[] line = [.. plot.Slices.Select(slice => plot.Edge(slice, side))];
            plot.Drawing.Polyline(line, stroke);
            plot.Labels.Keep(line);
        }
    }

    /// <summary>Arrows up the axis, as long as the lift is strong; the strongest is named.</summary>
    private static void Updrafts(ThermalSectionPlot plot)
    {
        var strongest = plot.Slices.MaxBy(slice => slice.UpdraftMs)!;
        if (strongest.UpdraftMs <= 0)
            return;
        var (low, high) = (plot.Slices[0].HeightM, plot.Slices[^1].HeightM);
        var heights = UpdraftShares.Select(share => low + (share * (high - low)));
        foreach (var slice in heights.Select(plot.At).Where(slice => slice.UpdraftMs > 0))
        {
            var foot = plot.Edge(slice, 0);
            var tip = foot with { Y = foot.Y - (30 * slice.UpdraftMs / strongest.UpdraftMs) };
            Arrow.Draw(plot.Drawing, foot, tip, Flow with { Width = 1.8 });
            plot.Labels.Keep([foot, tip], 4);
        }

        var at = plot.Edge(strongest, 0);
        plot.Labels.PlaceNear(plot.Input.In.Say($"core {plot.Input.In.Vertical(strongest.UpdraftMs)}"), Name, plot.Edge(strongest, 1) with { Y = at.Y }, gap: 8);
    }

    private static void Usable(ThermalSectionPlot plot)
    {
        if (plot.Input.Usable is not var (bottom, top))
            return;
        var (frame, say) = (plot.Frame, plot.Input.In);
        foreach (var y in new[] { plot.Y(bottom), plot.Y(top) })
        {
            plot.Drawing.Line(frame.Left, y, frame.Right, y, Bound);
            plot.Labels.Keep([new(frame.Left, y), new(frame.Right, y)]);
        }

        var bar = new Frame(frame.Left, plot.Y(top), frame.Left + 6, plot.Y(bottom));
        plot.Drawing.Rectangle(bar.Left, bar.Top, bar.Width, bar.Height, fill: Ink.Black);
        plot.Labels.Keep(bar);
        plot.Labels.PlaceNear(say.Say($"usable to {say.Text(top)}"), Name with { Bold = true }, new(bar.Right, plot.Y(top) + 9), gap: 2);
        plot.Labels.PlaceNear(say.Say($"from {say.AtLeast(bottom, plot.Input.LeastStep)} [upwards]"), Name, new(bar.Right, plot.Y(bottom) - 8), gap: 2);
    }

    /// <summary>Arrows at the edges where air is drawn in or pushed out, as long as it is fast; the fastest are named.</summary>
    private static void Flows(ThermalSectionPlot plot)
    {
        var fastest = plot.Slices.Max(slice => Math.Abs(slice.OutwardMs));
        if (fastest < 0.005)
            return;
        var (low, high) = (plot.Slices[0].HeightM, plot.Slices[^1].HeightM);
        var slices = Enumerable.Range(0, 7).Select(i => plot.At(low + ((0.03 + (0.155 * i)) * (high - low)))).ToArray();
        foreach (var slice in slices)
        {
            foreach (var side in new[] { -1, 1 })
                FlowArrow(plot, slice, side, 26 * slice.OutwardMs / fastest);
        }

        NameFlow(plot, slices.MinBy(slice => slice.OutwardMs)!, inward: true);
        NameFlow(plot, slices.MaxBy(slice => slice.OutwardMs)!, inward: false);
    }

    private static void FlowArrow(ThermalSectionPlot plot, ThermalSlice slice, int side, double length)
    {
        if (Math.Abs(length) < 4)
            return;
        var edge = plot.Edge(slice, side);
        var (near, far) = (edge with { X = edge.X + (side * 5) }, edge with { X = edge.X + (side * (5 + Math.Abs(length))) });
        var (from, to) = length > 0 ? (near, far) : (far, near);
        Arrow.Draw(plot.Drawing, from, to, Flow, 5);
        plot.Labels.Keep([from, to], 3);
    }

    private static void NameFlow(ThermalSectionPlot plot, ThermalSlice slice, bool inward)
    {
        if (inward ? slice.OutwardMs > -0.005 : slice.OutwardMs < 0.005)
            return;
        var edge = plot.Edge(slice, 1);
        var speed = plot.Input.In.Vertical(Math.Abs(slice.OutwardMs));
        var text = inward ? plot.Input.In.Say($"in {speed}") : plot.Input.In.Say($"out {speed}");
        plot.Labels.PlaceNear(text, Name with { Ink = Ink.Accent }, edge with { X = edge.X + 30 }, gap: 5);
    }

    /// <summary>Where to look from above: the plumb line under the head of the column.</summary>
    private static void Below(ThermalSectionPlot plot)
    {
        var head = plot.Edge(plot.Slices[^1], 0);
        var foot = head with { Y = plot.Frame.Bottom };
        plot.Drawing.Line(head.X, head.Y, foot.X, foot.Y, new Stroke(Ink.Grey, 0.8, (1.5, 3)));
        plot.Labels.PlaceNear(plot.Input.In["straight below its head"], Small, foot with { Y = foot.Y - 7 }, gap: 5);
    }

    private static void Drift(ThermalSectionPlot plot)
    {
        var y = plot.Frame.Bottom + 18;
        if (plot.Input.DriftMs is not { } drift)
            return;
        var text = drift < 0.25 ? plot.Input.In["hardly drifts"] : plot.Input.In.Say($"drifts {plot.Input.In.Length(60 * drift)} a minute downwind");
        plot.Drawing.Text(plot.Frame.Right - 34, y, text, Name with { Anchor = Anchor.End });
        if (drift >= 0.25)
            Arrow.Draw(plot.Drawing, new(plot.Frame.Right - 28, y - 4), new(plot.Frame.Right, y - 4), Outline, 8);
    }
}
