using System.Globalization;
using DayBrief.Thermodynamics;
using DayBrief.Units;

namespace DayBrief.Service.Charts;

/// <summary>The printed lines of a tephigram: isobars with their heights, isotherms, dry adiabats, the ground.</summary>
internal static class TephigramGrid
{
    private static readonly Stroke Adiabat = new(Ink.Faint, 0.5, (1, 2.5));
    private static readonly TextStyle Small = new(TextStyle.Least) { Ink = Ink.Grey };

    public static void Lines(TephigramPlot plot)
    {
        var (coldest, warmest) = Corners(plot, (c, _) => c);
        for (var c = Math.Floor(coldest / 10) * 10; c <= warmest; c += 10)
            plot.Line(plot.Points([(c, 1100), (c, 100)]), c == 0 ? Stroke.Fine : Stroke.Grid);
        var (lowest, highest) = Corners(plot, Theta);
        for (var theta = Math.Floor(lowest / 10) * 10; theta <= highest; theta += 10)
            plot.Line(DryAdiabatThrough(plot, theta), Adiabat);
        foreach (var hpa in Isobars(plot))
            plot.Line(Isobar(plot, hpa), Stroke.Grid);
        Ground(plot);
        plot.Drawing.Rectangle(plot.Frame.Left, plot.Frame.Top, plot.Frame.Width, plot.Frame.Height, Stroke.Fine);
    }

    public static void Labels(TephigramPlot plot)
    {
        Heights(plot);
        var (coldest, warmest) = Corners(plot, (c, _) => c);
        for (var c = Math.Floor(coldest / 10) * 10; c <= warmest; c += 10)
            NameIsotherm(plot, c);
        NameAdiabat(plot);
    }

    private static IEnumerable<double> Isobars(TephigramPlot plot)
    {
        for (var hpa = Math.Floor(plot.SurfaceHpa / 50) * 50; hpa >= plot.TopHpa - 0.01; hpa -= 50)
            yield return hpa;
    }

    private static IReadOnlyList<Point> Isobar(TephigramPlot plot, double hpa) =>
        [.. Enumerable.Range(0, 13).Select(i =>
            plot.Scale.OnIsobar(hpa, plot.Frame.Left + (plot.Frame.Width * i / 12)))];

    private static void Ground(TephigramPlot plot)
    {
        var surface = Isobar(plot, plot.SurfaceHpa);
        plot.Drawing.Hatch(
            [.. surface, new(plot.Frame.Right, plot.Frame.Bottom), new(plot.Frame.Left, plot.Frame.Bottom)],
            3, 45, new Stroke(Ink.Grey, 0.4));
        plot.Line(surface, new Stroke(Ink.Black, 1), keepClear: true);
    }

    /// <summary>Pressure and height at the left edge; the ground first, then every isobar that has room.</summary>
    private static void Heights(TephigramPlot plot)
    {
        var (unit, say) = (plot.Input.Unit, plot.Input.In);
        var (pressure, height) = (26.0, plot.Frame.Left - 5);
        plot.Drawing.Text(pressure, 24, "hPa", Small with { Anchor = Anchor.End });
        plot.Drawing.Text(height, 12, say.Say($"{unit.Name()} above [the field, on two lines]"), Small with { Anchor = Anchor.End });
        plot.Drawing.Text(height, 24, say["the field [on two lines]"], Small with { Anchor = Anchor.End });
        var free = double.PositiveInfinity;
        foreach (var hpa in Isobars(plot).Prepend(plot.SurfaceHpa))
        {
            var y = plot.Scale.OnIsobar(hpa, plot.Frame.Left).Y + 3.5;
            if (y > free || plot.Profile.HeightAt(Pressure.FromHectopascals(hpa)) is not { } above)
                continue;
            plot.Drawing.Text(pressure, y, hpa.ToString("0", CultureInfo.InvariantCulture), Small with { Anchor = Anchor.End });
            plot.Drawing.Text(height, y, say.Figure(plot.Input.AboveField(above.Metres)), new TextStyle(TextStyle.Least) { Anchor = Anchor.End });
            free = y - 13;
        }
    }

    /// <summary>Along the line, near where it leaves the sheet on the right or at the top.</summary>
    private static void NameIsotherm(TephigramPlot plot, double celsius)
    {
        if (plot.Frame.Clip(plot.Scale.At(celsius, 1100), plot.Scale.At(celsius, 100)) is not var (_, end))
            return;
        Point Back(double by) => new(end.X - (by * 0.707) - 2, end.Y + (by * 0.707) - 2);
        plot.Labels.Place(
            plot.Input.In.Celsius(celsius),
            Small with { Rotation = -45, Halo = true, Anchor = Anchor.End },
            Back(6), Back(20), Back(45), Back(75));
    }

    private static void NameAdiabat(TephigramPlot plot)
    {
        var (lowest, highest) = Corners(plot, Theta);
        for (var theta = Math.Floor(highest / 10) * 10; theta >= lowest; theta -= 10)
        {
            var line = DryAdiabatThrough(plot, theta);
            if (plot.Frame.Clip(line[0], line[^1]) is not var (from, _))
                continue;
            Point Along(double by) => new(from.X + (by * 0.707) + 2, from.Y + (by * 0.707) - 2);
            var style = Small with { Rotation = 45, Halo = true };
            if (plot.Labels.Place(plot.Input.In["dry adiabat"], style, Along(8), Along(30), Along(60), Along(90)))
                return;
        }
    }

    private static IReadOnlyList<Point> DryAdiabatThrough(TephigramPlot plot, double thetaCelsius)
    {
        var theta = thetaCelsius + Temperature.ZeroCelsius;
        return plot.Points(new[] { 100.0, 1100 }.Select(hpa =>
            ((theta * Math.Pow(hpa / 1000, Air.Kappa)) - Temperature.ZeroCelsius, hpa)));
    }

    private static double Theta(double celsius, double hpa) => DryAdiabat
        .PotentialTemperature(Temperature.FromCelsius(celsius), Pressure.FromHectopascals(hpa)).Celsius;

    private static (double Least, double Most) Corners(TephigramPlot plot, Func<double, double, double> of)
    {
        var (l, t, r, b) = plot.Frame;
        double[] values = [.. new Point[] { new(l, t), new(r, t), new(l, b), new(r, b) }.Select(corner =>
        {
            var (celsius, hpa) = plot.Scale.Back(corner);
            return of(celsius, hpa);
        })];
        return (values.Min(), values.Max());
    }
}
