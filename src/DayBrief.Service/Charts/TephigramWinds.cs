using DayBrief.Units;

namespace DayBrief.Service.Charts;

/// <summary>The winds of the ascent at the right of a tephigram, as barbs level with their pressures.</summary>
internal static class TephigramWinds
{
    private const double Length = 19;
    private const double Spacing = 17;

    public static void Draw(TephigramPlot plot)
    {
        var x = plot.Frame.Right + (0.54 * TephigramPlot.RightMargin);
        var free = double.PositiveInfinity;
        foreach (var (hpa, wind) in Winds(plot).OrderByDescending(reported => reported.Hpa))
        {
            var y = plot.Scale.OnIsobar(hpa, plot.Frame.Right).Y;
            if (y > free)
                continue;
            WindBarb.Draw(plot.Drawing, new(x, y), wind, Length, plot.Input.SouthernHemisphere);
            plot.Drawing.Line(plot.Frame.Right, y, plot.Frame.Right + 3, y, Stroke.Fine);
            free = y - Spacing;
        }

        if (double.IsFinite(free))
            plot.Drawing.Text(x, 12, plot.Input.In["wind"], new TextStyle(TextStyle.Least) { Ink = Ink.Grey, Anchor = Anchor.Middle });
    }

    private static IEnumerable<(double Hpa, Wind Wind)> Winds(TephigramPlot plot)
    {
        var (profile, sounding) = (plot.Profile, plot.Input.Analysis.Sounding);
        var byPressure = sounding.Levels
            .Where(level => level.Wind is not null)
            .Select(level => (level.Pressure.Hectopascals, level.Wind!.Value));
        var byHeight = profile.Elevation is { } ground
            ? sounding.WindsByHeight
                .Select(reported => (Pressure: profile.PressureAt(reported.Height - ground), reported.Wind))
                .Where(reported => reported.Pressure is not null)
                .Select(reported => (reported.Pressure!.Value.Hectopascals, reported.Wind))
            : [];
        return byPressure.Concat(byHeight)
            .Where(reported => reported.Item1 <= plot.SurfaceHpa && reported.Item1 >= plot.TopHpa);
    }
}
