using System.Globalization;

namespace DayBrief.Service.Charts;

/// <summary>The edges of the picture of the day: heights, hours, sun, times to mark, and the level lines across it.</summary>
internal static class DayPictureAxes
{
    private const double RowHeight = 13.5;

    private static readonly TextStyle Small = new(TextStyle.Least) { Ink = Ink.Grey };
    private static readonly Stroke Judged = new(Ink.Black, 1.6, (9, 3));
    private static readonly Stroke Present = new(Ink.Black, 1.4, (1, 3));
    private static readonly Stroke Freezing = new(Ink.Grey, 0.9, (6, 3));
    private static readonly Stroke Ceiling = new(Ink.Black, 1.1, (8, 2.5));

    /// <summary>Rows under the ground, and the end of a name that stands at its tick, in order of liking.</summary>
    private static readonly (int Row, Anchor Anchor)[] Places =
        [(2, Anchor.Start), (2, Anchor.End), (3, Anchor.Start), (3, Anchor.End)];

    public static void Draw(DayPicturePlot plot)
    {
        var (frame, unit) = (plot.Frame, plot.Input.Unit);
        plot.Outside.Write(new(2, 12), plot.Input.In.Say($"{unit.Name()} above the field"), Small);
        foreach (var metres in unit.Ticks(plot.TopM, Math.Clamp((int)(frame.Height / 16), 2, 6)))
        {
            var y = plot.Y(metres);
            plot.Drawing.Line(frame.Left, y, frame.Right, y, metres == 0 ? new Stroke(Ink.Black, 1.2) : Stroke.Grid);
            plot.Drawing.Text(frame.Left - 5, y + 3.5, unit.FromMetres(metres).ToString("N0", plot.Input.Language.Culture), Small with { Anchor = Anchor.End });
        }

        plot.Drawing.Line(frame.Left, frame.Top, frame.Left, frame.Bottom, Stroke.Fine);
        plot.Drawing.Line(frame.Right, frame.Top, frame.Right, frame.Bottom, Stroke.Fine);
        Edge(plot, frame.Left, plot.From, plot.Input.Sunrise is null ? "" : plot.Input.In["sunrise"], Anchor.Start);
        Edge(plot, frame.Right, plot.To, plot.Input.Sunset is null ? "" : plot.Input.In["sunset"], Anchor.End);
        Now(plot);
        foreach (var key in plot.Input.KeyTimes.OrderByDescending(key => key.Time))
            Mark(plot, key);
        for (var hour = 3 * ((plot.From.Hour / 3) + 1); hour <= plot.To.Hour; hour += 3)
            Hour(plot, new TimeOnly(hour, 0));
    }

    /// <summary>Freezing level and ceiling across the picture; named at the left where the morning leaves room.</summary>
    public static void Limits(DayPicturePlot plot)
    {
        var say = plot.Input.In;
        Level(plot, plot.Input.FreezingLevelM, "0 °C", say.Text, Freezing);
        Level(plot, plot.Input.JudgedTopM, say["instructor's top"], say.Text, Judged);
        var reached = plot.Input.Moments.Any(m => (m.P90M ?? m.UsableTopM) > plot.Input.CeilingM);
        Level(plot, plot.Input.CeilingM, say["ceiling [of the field]"], say.Ceiling, reached ? Ceiling with { Ink = Ink.Warning } : Ceiling);
        string?[] above =
        [
            plot.Input.CeilingM is { } ceiling && ceiling > plot.TopM ? $"{say["ceiling [of the field]"]} {say.Ceiling(ceiling)}" : null,
            plot.Input.FreezingLevelM is { } freezing && freezing > plot.TopM ? $"0 °C {say.Text(freezing)}" : null,
            plot.Input.Moments.Max(m => m.CloudTopM) is { } cloud && cloud > plot.TopM ? $"{say["cloud tops"]} {say.Text(cloud)}" : null,
        ];
        var names = above.OfType<string>().ToArray();
        for (var count = names.Length; count > 0; count--)
        {
            var text = say.Say($"higher up: {string.Join(", ", names.Take(count))}");
            if (plot.Outside.Place(text, Small with { Anchor = Anchor.End }, new Point(plot.Frame.Right, 12)))
                return;
        }
    }

    internal static string Clock(TimeOnly time) => time.ToString("HH:mm", CultureInfo.InvariantCulture);

    private static void Level(DayPicturePlot plot, double? metres, string name, Func<double, string> figure, Stroke stroke)
    {
        if (metres is not { } height || height > plot.TopM || height < 0)
            return;
        var (y, frame) = (plot.Y(height), plot.Frame);
        plot.Drawing.Line(frame.Left, y, frame.Right, y, stroke);
        plot.Labels.Keep([new(frame.Left, y), new(frame.Right, y)]);
        var style = new TextStyle(TextStyle.Least) { Ink = stroke.Ink, Halo = true };
        var text = $"{name} {figure(height)}";
        var right = frame.Right - 4 - Typeface.WidthOf(text, style.Size);
        plot.Labels.Place(
            text, style, new(frame.Left + 5, y - 4), new(frame.Left + 5, y + 12), new(right, y - 4), new(right, y + 12));
    }

    /// <summary>A line over the whole height, on a black foot, named in the row of the hours; none before sunrise or after sunset.</summary>
    private static void Now(DayPicturePlot plot)
    {
        if (plot.Input.Now is not { } now || now < plot.From || now > plot.To)
            return;
        var (x, frame) = (plot.X(now), plot.Frame);
        Point[] line = [new(x, frame.Top), new(x, frame.Bottom)];
        plot.Drawing.Polyline(line, Present);
        plot.Drawing.Polygon([new(x, frame.Bottom), new(x - 4.5, frame.Bottom + 6), new(x + 4.5, frame.Bottom + 6)], fill: Ink.Black);
        plot.Labels.Keep(line);
        var style = new TextStyle(TextStyle.Least) { Bold = true, Anchor = Anchor.Middle };
        var y = frame.Bottom + RowHeight + 4;
        var text = plot.Input.In.Say($"now {Clock(now)}");
        if (plot.Outside.Place(text, style, new(x, y), new(x, y + RowHeight)))
            return;
        // No room in the rows: beside the line, in the picture.
        foreach (var side in new[] { Anchor.Start, Anchor.End })
        {
            if (plot.Labels.Place(text, style with { Anchor = side, Halo = true }, new Point(x + (side == Anchor.Start ? 5 : -5), frame.Top + 13)))
                return;
        }
    }

    private static void Edge(DayPicturePlot plot, double x, TimeOnly time, string name, Anchor anchor)
    {
        var y = plot.Frame.Bottom + RowHeight + 2;
        x += anchor == Anchor.Start ? -6 : 6;
        plot.Outside.Write(new(x, y), Clock(time), Small with { Anchor = anchor });
        if (name.Length > 0)
            plot.Outside.Write(new(x, y + RowHeight), name, Small with { Anchor = anchor });
    }

    /// <summary>A tick on the ground, led down to its name in the first row with room.</summary>
    private static void Mark(DayPicturePlot plot, KeyTime key)
    {
        if (key.Time < plot.From || key.Time > plot.To)
            return;
        var (x, bottom) = (plot.X(key.Time), plot.Frame.Bottom);
        var style = new TextStyle(TextStyle.Least) { Bold = true };
        var text = $"{key.Label} {Clock(key.Time)}";
        foreach (var (row, anchor) in Places)
        {
            var at = new Point(x + (anchor == Anchor.End ? 3 : -3), bottom + 2 + (RowHeight * row));
            var lead = new Point[] { new(x, bottom - 7), new(x, at.Y - 9) };
            if (!plot.Outside.IsFree(lead[0], lead[1]) || !plot.Outside.Place(text, style with { Anchor = anchor }, at))
                continue;
            plot.Drawing.Polyline(lead, new Stroke(Ink.Black, 1.3));
            plot.Outside.Keep(lead, 2);
            return;
        }

        // No way down between the names of the edges: a tick on the ground, and its name below them.
        foreach (var anchor in new[] { Anchor.End, Anchor.Start, Anchor.Middle })
        {
            if (plot.Outside.Place(text, style with { Anchor = anchor }, new(x, bottom + 2 + (RowHeight * 3)), new(x, bottom + 2 + (RowHeight * 2))))
                break;
        }

        plot.Drawing.Line(x, bottom - 7, x, bottom + 3, new Stroke(Ink.Black, 1.3));
    }

    private static void Hour(DayPicturePlot plot, TimeOnly time)
    {
        var (x, bottom) = (plot.X(time), plot.Frame.Bottom);
        plot.Drawing.Line(x, bottom, x, bottom + 3, Stroke.Fine);
        plot.Outside.Place(Clock(time), Small with { Anchor = Anchor.Middle }, new Point(x, bottom + RowHeight + 2));
    }
}
