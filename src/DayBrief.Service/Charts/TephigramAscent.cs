using DayBrief.Soundings;
using DayBrief.Units;

namespace DayBrief.Service.Charts;

/// <summary>The measured curves of a tephigram, with the inversions as hatched columns at the left edge.</summary>
internal static class TephigramAscent
{
    private const double ColumnWidth = 10;

    private static readonly Stroke DewPoint = new(Ink.Black, 1.3, (5, 3));

    public static void Lines(TephigramPlot plot)
    {
        foreach (var inversion in Shown(plot))
        {
            var (left, top, right, bottom) = Column(plot, inversion);
            plot.Drawing.Hatch([new(left, top), new(right, top), new(right, bottom), new(left, bottom)], 2.6, 45, Stroke.Fine);
            plot.Drawing.Rectangle(left, top, right - left, bottom - top, Stroke.Fine);
            plot.Labels.Keep(Column(plot, inversion));
        }

        plot.Line(plot.Ascent(plot.SurfaceHpa, plot.TopHpa), new Stroke(Ink.Black, 2), keepClear: true);
        plot.Line(DewPoints(plot), DewPoint, keepClear: true);
    }

    public static void Labels(TephigramPlot plot)
    {
        foreach (var inversion in Shown(plot).OrderByDescending(found => found.Strength.Kelvins).Take(3))
            NameInversion(plot, inversion);
        NameCurve(plot, plot.Ascent(plot.SurfaceHpa, plot.TopHpa), plot.Input.In["temperature"], right: true);
        NameCurve(plot, DewPoints(plot), plot.Input.In["dew point"], right: false);
    }

    /// <summary>Those that start on the sheet and weigh half a degree or more.</summary>
    internal static IEnumerable<Inversion> Shown(TephigramPlot plot) => plot.Input.Analysis.Inversions
        .Where(found => found.BasePressure.Hectopascals > plot.TopHpa && found.Strength.Kelvins >= 0.5);

    private static IReadOnlyList<Point> DewPoints(TephigramPlot plot) => plot.Points(
        from hpa in plot.Pressures(plot.SurfaceHpa, plot.TopHpa)
        let at = plot.Profile.DewPointAt(Pressure.FromHectopascals(hpa))
        where at is not null
        select (at.Value.Celsius, hpa));

    /// <summary>A column at the left edge, as the layers of the ground are drawn.</summary>
    private static Frame Column(TephigramPlot plot, Inversion inversion)
    {
        double At(double hpa) => plot.Scale.OnIsobar(Math.Max(hpa, plot.TopHpa), plot.Frame.Left + (ColumnWidth / 2)).Y;
        var (top, bottom) = (At(inversion.TopPressure.Hectopascals), At(inversion.BasePressure.Hectopascals));
        return new(plot.Frame.Left, Math.Min(top, bottom - 4), plot.Frame.Left + ColumnWidth, bottom);
    }

    private static void NameCurve(TephigramPlot plot, IReadOnlyList<Point> curve, string name, bool right)
    {
        var style = new TextStyle(TextStyle.Least) { Bold = right, Halo = true };
        var spots = curve.Where(plot.Frame.Holds).Reverse().Skip(1).ToArray();
        if (!Array.Exists(spots, spot => plot.Labels.PlaceNear(name, style, spot, rightFirst: right, reach: 1)))
            _ = Array.Exists(spots, spot => plot.Labels.PlaceNear(name, style, spot, rightFirst: right));
    }

    private static void NameInversion(TephigramPlot plot, Inversion inversion)
    {
        var strength = plot.Input.In.Kelvins(inversion.Strength.Kelvins);
        var column = Column(plot, inversion);
        var style = new TextStyle(TextStyle.Least) { Ink = Ink.Grey, Halo = true };
        var text = plot.Input.In.Say($"inversion {strength}");
        var beside = new Point(column.Right, (column.Top + column.Bottom) / 2);
        if (plot.Labels.PlaceNear(text, style, beside, gap: 3, reach: 2))
            return;
        var curve = plot.Ascent(inversion.BasePressure.Hectopascals, inversion.TopPressure.Hectopascals);
        if (curve.Count == 0 || !plot.Labels.PlaceNear(text, style, curve[curve.Count / 2], reach: 2))
            plot.Labels.PlaceNear($"+{strength}", style, beside, gap: 3, reach: 2);
    }
}
