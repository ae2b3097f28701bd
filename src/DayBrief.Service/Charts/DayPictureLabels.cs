namespace DayBrief.Service.Charts;

/// <summary>The names of what the picture of the day shows, beside what they name.</summary>
internal static class DayPictureLabels
{
    private static readonly double[] Asides = [0, -14, 14, -30, 30, -60, 60, -100];

    public static void Draw(DayPicturePlot plot)
    {
        if (!plot.Input.Moments.Any(m => m.UsableTopM is not null))
        {
            var style = new TextStyle(15) { Bold = true, Anchor = Anchor.Middle, Halo = true };
            var (middle, low) = ((plot.Frame.Left + plot.Frame.Right) / 2, plot.Frame.Bottom);
            plot.Labels.Place(plot.Input.In["no usable thermals"], style, new(middle, low - 30), new(middle, low - 60), new(middle, low - 90));
        }

        NameTop(plot);
        NameCloud(plot);
        NameGaps(plot);
    }

    /// <summary>In the free room under the curve where there is some, led to its highest point.</summary>
    private static void NameTop(DayPicturePlot plot)
    {
        if (plot.Input.Moments.Where(m => m.UsableTopM is not null).MaxBy(m => m.UsableTopM) is not { } best)
            return;
        var at = plot.At(best.Time, best.UsableTopM!.Value);
        plot.Drawing.Circle(at.X, at.Y, 2.6, fill: Ink.Black);
        var name = plot.Input.In.Say($"usable top {plot.Input.In.Text(best.UsableTopM!.Value)}");
        var style = new TextStyle(TextStyle.Least) { Bold = true, Halo = true, Anchor = Anchor.Middle };
        foreach (var spot in
            from down in Enumerable.Range(0, 60).Select(i => i < 45 ? 18 + (4 * i) : -8 - (4 * (i - 45)))
            from aside in Asides
            select new Point(at.X + aside, at.Y + down))
        {
            if (!plot.Labels.Place(name, style, spot))
                continue;
            if (spot.Y - at.Y > 26)
                plot.Drawing.Line(at.X, at.Y + 4, Near(at.X, spot.X, name, style), spot.Y - 11, Stroke.Fine);
            NameRange(plot, best, spot);
            return;
        }
    }

    /// <summary>Where the line from the highest point meets its name.</summary>
    private static double Near(double x, double middle, string name, TextStyle style)
    {
        var half = (Typeface.WidthOf(name, style.Size, style.Bold) / 2) - 4;
        return Math.Clamp(x, middle - half, middle + half);
    }

    private static void NameRange(DayPicturePlot plot, DayMoment best, Point name)
    {
        if (best is not { P10M: not null, P90M: not null })
            return;
        var spots =
            from down in Enumerable.Range(0, 12)
            from aside in Asides
            select new Point(name.X + aside, name.Y + 13 + (4 * down));
        plot.Labels.Place(plot.Input.In["8 chances in 10: within the dots"], new TextStyle(TextStyle.Least) { Ink = Ink.Accent, Halo = true, Anchor = Anchor.Middle }, [.. spots]);
    }

    private static void NameCloud(DayPicturePlot plot)
    {
        var cloudy = plot.Input.Moments.Where(m => m.CloudBaseM is not null).ToArray();
        if (cloudy.Length == 0)
            return;
        var thick = cloudy.MaxBy(m => (m.CloudTopM ?? m.CloudBaseM) - m.CloudBaseM)!;
        var (low, high) = (plot.Y(thick.CloudBaseM!.Value), plot.Y(Math.Min(plot.TopM, thick.CloudTopM ?? thick.CloudBaseM.Value)));
        var bases = cloudy.Select(m => m.CloudBaseM!.Value).ToArray();
        var say = plot.Input.In;
        var range = say.Figure(bases.Min()) == say.Figure(bases.Max())
            ? say.Text(bases.Max())
            : $"{say.Figure(bases.Min())}–{say.Text(bases.Max())}";
        var style = new TextStyle(TextStyle.Least) { Halo = true, Anchor = Anchor.Middle };
        var x = plot.X(thick.Time);
        foreach (var text in new[] { say.Say($"cloud, base {range}"), say["cloud"] })
        {
            var half = (Typeface.WidthOf(text, style.Size) / 2) + 2;
            var spots =
                from aside in new[] { 0, -30, 30, -60, 60, -100, 100 }
                let within = Math.Clamp(x + aside, plot.Frame.Left + half, plot.Frame.Right - half)
                from y in new[] { ((low + high) / 2) + 4, high - 6, high - 16, high + 11, high - 26 }
                select new Point(within, y);
            if (plot.Labels.Place(text, style, [.. spots]))
                return;
        }
    }

    /// <summary>A gap of an hour or more between two usable spells is said.</summary>
    private static void NameGaps(DayPicturePlot plot)
    {
        var spells = plot.Stretches(m => m.UsableTopM is not null).ToArray();
        for (var i = 0; i + 1 < spells.Length; i++)
        {
            var (end, start) = (plot.X(spells[i][^1].Time), plot.X(spells[i + 1][0].Time));
            if (spells[i + 1][0].Time - spells[i][^1].Time < TimeSpan.FromHours(1))
                continue;
            var style = new TextStyle(TextStyle.Least) { Anchor = Anchor.Middle, Halo = true };
            var middle = (end + start) / 2;
            var lines = Typeface.Wrap(plot.Input.In["no usable thermals"], 60, style.Size);
            var top = plot.Frame.Bottom - 9 - (13 * (lines.Count - 1));
            if (!plot.Labels.IsFree(new(middle, top), lines[0], style))
                continue;
            for (var line = 0; line < lines.Count; line++)
                plot.Labels.Write(new(middle, top + (13 * line)), lines[line], style);
        }
    }
}
