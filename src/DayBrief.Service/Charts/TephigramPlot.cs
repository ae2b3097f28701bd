using DayBrief.Soundings;
using DayBrief.Units;

namespace DayBrief.Service.Charts;

/// <summary>The sheet of one tephigram: what part of the air it covers and where things lie on it.</summary>
internal sealed class TephigramPlot
{
    internal const double LeftMargin = 78;
    internal const double RightMargin = 48;
    internal const double TopMargin = 32;
    internal const double BottomMargin = 32;

    /// <summary>A dew point aloft further below the temperature than this may leave the sheet on the left.</summary>
    private const double DewPointRoomK = 6;

    private TephigramPlot(TephigramInput input, double topHpa, Drawing drawing, Frame frame, TephigramScale scale)
    {
        Input = input;
        TopHpa = topHpa;
        Drawing = drawing;
        Frame = frame;
        Scale = scale;
        Labels = new LabelRoom(drawing, frame);
        Outside = new LabelRoom(drawing, new Frame(0, 0, drawing.Width, drawing.Height));
    }

    public TephigramInput Input { get; }

    public Profile Profile => Input.Profile;

    public double SurfaceHpa => Profile.SurfacePressure.Hectopascals;

    public double TopHpa { get; }

    public Drawing Drawing { get; }

    public Frame Frame { get; }

    public TephigramScale Scale { get; }

    public LabelRoom Labels { get; }

    public LabelRoom Outside { get; }

    public static TephigramPlot For(TephigramInput input)
    {
        var topHpa = TopHpaOf(input);
        var (left, right) = Across(input, topHpa);
        var room = input.Width - LeftMargin - RightMargin;
        var unit = new TephigramScale(1, 0, 0);
        double[] edges = [left, right];
        var bottom = edges.Min(u => -unit.OnIsobar(input.Profile.SurfacePressure.Hectopascals, u).Y);
        var top = edges.Append((left + right) / 2).Max(u => -unit.OnIsobar(topHpa, u).Y);
        var size = Math.Min(room / (right - left), (input.MaxHeight - TopMargin - BottomMargin) / (top - bottom));
        left = right - (room / size);
        var frame = new Frame(LeftMargin, TopMargin, LeftMargin + room, TopMargin + (size * (top - bottom)) + 6);
        var drawing = new Drawing(
            input.Width, frame.Bottom + BottomMargin, TephigramWords.Title(input), TephigramWords.Describe(input));
        return new(input, topHpa, drawing, frame, new(size, frame.Left - (size * left), frame.Top + (size * top)));
    }

    /// <summary>A line given by temperature and pressure, on the page.</summary>
    public IReadOnlyList<Point> Points(IEnumerable<(double Celsius, double Hpa)> line) =>
        [.. line.Select(at => Scale.At(at.Celsius, at.Hpa))];

    /// <summary>Draws the part of a line that lies on the sheet.</summary>
    public void Line(IReadOnlyList<Point> points, Stroke stroke, bool keepClear = false)
    {
        foreach (var piece in Frame.Clip(points))
        {
            Drawing.Polyline(piece, stroke);
            if (keepClear)
                Labels.Keep(piece);
        }
    }

    /// <summary>Pressures from one to another, the ascent's own levels among them.</summary>
    public IEnumerable<double> Pressures(double fromHpa, double toHpa) =>
        Profile.TopPressure.Hectopascals is var top
            ? Input.Analysis.Sounding.Levels.Select(level => level.Pressure.Hectopascals)
                .Concat(Enumerable.Range(0, 120).Select(i => 10.0 * i)).Append(fromHpa).Append(toHpa)
                .Where(hpa => hpa <= fromHpa && hpa >= toHpa && hpa >= top)
                .Distinct().OrderDescending()
            : [];

    /// <summary>Points of the ascent's temperature between two pressures.</summary>
    public IReadOnlyList<Point> Ascent(double fromHpa, double toHpa) => Points(
        from hpa in Pressures(fromHpa, toHpa)
        let at = Profile.TemperatureAt(Pressure.FromHectopascals(hpa))
        where at is not null
        select (at.Value.Celsius, hpa));

    private static double TopHpaOf(TephigramInput input)
    {
        var profile = input.Profile;
        var wanted = input.DayTop is { } top
            ? profile.PressureAt(Height.FromMetres(1.5 * top.Metres))?.Hectopascals ?? 600
            : 600;
        var surface = profile.SurfacePressure.Hectopascals;
        var least = Math.Min(700, surface - 250);
        return Math.Max(Math.Min(wanted, least), profile.TopPressure.Hectopascals);
    }

    /// <summary>Range across, in kelvins from the point 0 °C, 1000 hPa: temperature, stages and the surface air's
    /// dew point always, the dew point aloft as far as there is room.</summary>
    private static (double Left, double Right) Across(TephigramInput input, double topHpa)
    {
        var profile = input.Profile;
        var surface = profile.SurfacePressure;
        var across = new List<double>();
        void Add(double celsius, Pressure at) => across.Add(TephigramScale.Turned(celsius, at.Hectopascals).Right);
        foreach (var level in input.Analysis.Sounding.Levels.Select(level => level.Pressure)
            .Where(p => p <= surface && p.Hectopascals >= topHpa)
            .Append(Pressure.FromHectopascals(topHpa)))
        {
            if (profile.TemperatureAt(level) is not { } t)
                continue;
            Add(t.Celsius, level);
            Add(Math.Max(profile.DewPointAt(level)?.Celsius ?? t.Celsius, t.Celsius - DewPointRoomK), level);
        }

        foreach (var stage in input.Stages)
            Add(stage.Surface.Celsius, surface);
        if (input.SurfaceDewPoint is { } dewPoint)
            Add(Math.Max(dewPoint.Celsius, profile.SurfaceTemperature.Celsius - 15), surface);
        return (across.Min() - 2, across.Max() + 2);
    }
}
