using DayBrief.Soundings;
using DayBrief.Thermodynamics;
using DayBrief.Units;

namespace DayBrief.Service.Charts;

/// <summary>How the day heats the air on a tephigram: a dry adiabat for each stage, and where cloud would form.</summary>
internal static class TephigramHeating
{
    private static readonly Stroke Rising = new(Ink.Accent, 1.1);
    private static readonly Stroke Moisture = new(Ink.Grey, 0.9, (1.2, 2.2));
    private static readonly Stroke InCloud = new(Ink.Grey, 1, (7, 2.5));

    public static void Lines(TephigramPlot plot)
    {
        var stages = plot.Input.Stages;
        for (var i = 0; i < stages.Count; i++)
        {
            var path = Path(plot, stages[i]);
            var end = Math.Max(path.Top?.Hectopascals ?? plot.TopHpa, plot.TopHpa);
            var line = plot.Points(Dry(plot, stages[i].Surface, end));
            plot.Line(line, i == stages.Count - 1 ? Rising with { Width = 1.8 } : Rising, keepClear: true);
            if (path.Top is not null && plot.Frame.Holds(line[^1]) && !path.Condenses)
                plot.Drawing.Circle(line[^1].X, line[^1].Y, 2.6, Rising, Ink.Paper);
        }

        if (Cloud(plot) is not { } cloud || plot.Input.SurfaceDewPoint is not { } dewPoint)
            return;
        plot.Line(plot.Points(Mixing(plot, dewPoint, cloud.Hpa)), Moisture, keepClear: true);
        plot.Line(plot.Points(Saturated(plot, cloud.Celsius, cloud.Hpa)), InCloud, keepClear: true);
        var at = plot.Scale.At(cloud.Celsius, cloud.Hpa);
        if (plot.Frame.Holds(at))
            plot.Line([new(at.X - 14, at.Y), new(at.X + 14, at.Y)], new Stroke(Ink.Black, 2.4), keepClear: true);
    }

    public static void Labels(TephigramPlot plot)
    {
        var stages = plot.Input.Stages;
        foreach (var i in Enumerable.Range(0, stages.Count).OrderBy(i => i == stages.Count - 1 ? -1 : i))
            NameStage(plot, stages[i]);
        NameCloud(plot);
        foreach (var stage in stages.Reverse())
            NameTop(plot, stage);
    }

    /// <summary>Where cloud forms: of the last stage if it condenses, else the level the ascent and its moisture give.</summary>
    internal static (double Celsius, double Hpa, bool Reached)? Cloud(TephigramPlot plot)
    {
        if (plot.Input.SurfaceDewPoint is not { } dewPoint)
            return null;
        if (plot.Input.Stages.Count > 0 && Path(plot, plot.Input.Stages[^1]) is { Condenses: true, Top: { } top } path)
            return (path.Celsius, top.Hectopascals, true);
        return Level(plot.Input, dewPoint) is { } level && level.Pressure.Hectopascals > plot.TopHpa
            ? (level.Temperature.Celsius, level.Pressure.Hectopascals, false)
            : null;
    }

    internal static ConvectiveCondensation? Level(TephigramInput input, Temperature dewPoint) =>
        ConvectiveCondensation.Of(input.Profile, Humidity.Of(dewPoint, input.Profile.SurfacePressure));

    private static HeatingPath Path(TephigramPlot plot, HeatingStage stage) =>
        HeatingPath.Of(plot.Profile, stage.Surface, plot.Input.SurfaceDewPoint);

    private static IEnumerable<(double Celsius, double Hpa)> Dry(TephigramPlot plot, Temperature surface, double toHpa) =>
        new[] { plot.SurfaceHpa, toHpa }.Select(hpa =>
            (DryAdiabat.Moved(surface, plot.Profile.SurfacePressure, Pressure.FromHectopascals(hpa)).Celsius, hpa));

    private static IEnumerable<(double Celsius, double Hpa)> Mixing(TephigramPlot plot, Temperature dewPoint, double toHpa)
    {
        var w = Humidity.Of(dewPoint, plot.Profile.SurfacePressure);
        return Enumerable.Range(0, 21)
            .Select(i => plot.SurfaceHpa + ((toHpa - plot.SurfaceHpa) * i / 20))
            .Select(hpa => (Humidity.DewPoint(w, Pressure.FromHectopascals(hpa)).Celsius, hpa));
    }

    private static IEnumerable<(double Celsius, double Hpa)> Saturated(TephigramPlot plot, double celsius, double fromHpa)
    {
        var (start, from) = (Temperature.FromCelsius(celsius), Pressure.FromHectopascals(fromHpa));
        return Enumerable.Range(0, 21)
            .Select(i => fromHpa + ((plot.TopHpa - fromHpa) * i / 20))
            .Select(hpa => (MoistAdiabat.Moved(start, from, Pressure.FromHectopascals(hpa)).Celsius, hpa));
    }

    /// <summary>Time and surface temperature under the ground line.</summary>
    private static void NameStage(TephigramPlot plot, HeatingStage stage)
    {
        var x = plot.Scale.At(stage.Surface.Celsius, plot.SurfaceHpa).X;
        var y = plot.Frame.Bottom + 13;
        var style = new TextStyle(TextStyle.Least) { Bold = true, Anchor = Anchor.Middle };
        var celsius = plot.Input.In.Celsius(stage.ToldC);
        var (upper, lower) = (new Point(x, y), new Point(x, y + 13));
        if (!plot.Outside.IsFree(upper, stage.Label, style) || !plot.Outside.IsFree(lower, celsius, style))
        {
            AlongAdiabat(plot, stage);
            return;
        }

        plot.Drawing.Line(x, plot.Frame.Bottom, x, plot.Frame.Bottom + 3, Stroke.Fine);
        plot.Outside.Write(upper, stage.Label, style);
        plot.Outside.Write(lower, celsius, style with { Bold = false });
    }

    /// <summary>Where labels stand too close under the ground line, the time is written along the adiabat.</summary>
    private static void AlongAdiabat(TephigramPlot plot, HeatingStage stage)
    {
        var foot = plot.Scale.At(stage.Surface.Celsius, plot.SurfaceHpa);
        var end = plot.Scale.At(Path(plot, stage).Celsius, Path(plot, stage).Top?.Hectopascals ?? plot.TopHpa);
        var spots = Enumerable.Range(4, 40).Where(i => foot.X - (8 * i) > end.X).Select(i => new Point(foot.X - (8 * i) + 2.3, foot.Y - (8 * i) - 2.3));
        plot.Labels.Place(stage.Label, new TextStyle(TextStyle.Least) { Rotation = 45 }, [.. spots]);
    }

    private static void NameTop(TephigramPlot plot, HeatingStage stage)
    {
        var path = Path(plot, stage);
        if (path.Condenses || path.Top is not { } top || plot.Profile.HeightAt(top) is not { } height)
            return;
        var at = plot.Scale.At(path.Celsius, top.Hectopascals);
        var style = new TextStyle(TextStyle.Least) { Ink = Ink.Accent, Halo = true };
        var text = plot.Input.In.Text(plot.Input.AboveField(height.Metres));
        plot.Labels.PlaceNear(text, style, at, reach: 3);
    }

    private static void NameCloud(TephigramPlot plot)
    {
        if (Cloud(plot) is not { } cloud
            || plot.Profile.HeightAt(Pressure.FromHectopascals(cloud.Hpa)) is not { } height)
        {
            return;
        }

        var at = plot.Scale.At(cloud.Celsius, cloud.Hpa);
        var say = plot.Input.In;
        var text = say.Text(plot.Input.AboveField(height.Metres));
        string[] names = cloud.Reached
            ? [say.Say($"cloud base {text}"), say.Say($"base {text}"), text]
            : [say.Say($"cloud would form at {text}"), say.Say($"cloud from {text}"), say.Say($"cloud {text}")];
        var style = new TextStyle(TextStyle.Least) { Bold = cloud.Reached, Halo = true };
        _ = Array.Exists(names, name => plot.Labels.PlaceNear(name, style, at, gap: 17));
    }

    public static void NameMoisture(TephigramPlot plot)
    {
        if (plot.Input.SurfaceDewPoint is not { } dewPoint || Cloud(plot) is not { } cloud)
            return;
        var grams = 1000 * Humidity.Of(dewPoint, plot.Profile.SurfacePressure).KilogramsPerKilogram;
        var style = new TextStyle(TextStyle.Least) { Ink = Ink.Grey, Halo = true, Anchor = Anchor.End };
        var line = plot.Points(Mixing(plot, dewPoint, cloud.Hpa));
        plot.Labels.Place(
            plot.Input.In.Say($"{grams:0.0} g/kg"),
            style,
            [.. line.Skip(2).Select(p => new Point(p.X - 5, p.Y + 4)), .. line.Skip(2).Select(p => new Point(p.X + 46, p.Y + 4))]);
        var cloudAir = plot.Points(Saturated(plot, cloud.Celsius, cloud.Hpa));
        plot.Labels.Place(
            plot.Input.In["air in cloud"],
            style with { Anchor = Anchor.Start },
            [.. cloudAir.Reverse().Skip(2).Select(p => new Point(p.X + 6, p.Y + 4))]);
    }
}
