using DayBrief.Units;

namespace DayBrief.Soundings.Formats.Igra;

/// <summary>One header and its levels.</summary>
/// <remarks>[IGRA2]: columns of the data format description; pressure Pa, temperature and depression 0.1 °C, humidity
/// 0.1 %, wind 0.1 m/s.</remarks>
internal sealed class IgraSounding
{
    public const string FormatName = "IGRA v2";

    private readonly ReadAscent _ascent;
    private int _removed;

    public IgraSounding(IgraLine header)
    {
        var date = (header.Whole(14, 17), header.Whole(19, 20), header.Whole(22, 23));
        var release = Release(header.Whole(28, 31));
        _ascent = new()
        {
            Source = new()
            {
                Format = FormatName,
                Station = header.Slice(2, 12).ToString(),
                ValidAt = Time(date, header.Whole(25, 26), release),
                LaunchTime = release,
                Position = Place(header),
            },
        };
        Expected = header.Whole(33, 36) ?? 0;
        Header = header;
    }

    /// <summary>Levels that the header announces.</summary>
    public int Expected { get; }

    public IgraLine Header { get; }

    public int Count { get; private set; }

    public void Add(IgraLine line)
    {
        Count++;
        var level = Level(line);
        _removed += new[] { (10, 15), (17, 21), (23, 27), (29, 33), (35, 39), (41, 45), (47, 51) }.Count(at => line.IsRemoved(at.Item1, at.Item2));
        if (level.PressureHpa is not null)
        {
            _ascent.Add(level);
        }
        else if (level is { HeightM: { } height, WindMs: >= 0 and <= 200, WindFromDeg: >= 0 and <= 360 })
        {
            _ascent.WindsByHeight.Add(new(Altitude.FromMetres(height), Wind.From(level.WindFromDeg.Value, Speed.FromMetresPerSecond(level.WindMs.Value))));
        }

        if (line.Slice(2, 2) is "1" && level.HeightM is { } ground && _ascent.Source.Elevation is null)
        {
            _ascent.Source = _ascent.Source with { Elevation = SourceFacts.Elevation(ground, new(line.Line, Field: "GPH")) };
        }
    }

    public ReadAscent Close()
    {
        if (Count < Expected)
        {
            _ascent.Warn("truncated", $"Line {Header.Line}: the header announces {Expected} levels, {Count} follow.");
        }

        if (_removed > 0)
        {
            _ascent.Note("values-removed", $"{_removed} value(s) were removed by the archive's own checks (−8888) and count as not reported.");
        }

        _ascent.WindsByHeight.Sort(static (a, b) => a.Height.CompareTo(b.Height));
        PressureOrder.Sort(_ascent);
        return _ascent;
    }

    private static ReadLevel Level(IgraLine line)
    {
        var celsius = line.Value(23, 27, "TEMP", 10);
        return new(new Origin(line.Line))
        {
            PressureHpa = line.Value(10, 15, "PRESS", 100),
            HeightM = line.Value(17, 21, "GPH", 1),
            TemperatureC = celsius,
            DewPointC = (celsius - line.Value(35, 39, "DPDP", 10)) ?? Moisture.FromRelative(celsius, line.Value(29, 33, "RH", 10), new(line.Line, Field: "RH")),
            WindFromDeg = line.Value(41, 45, "WDIR", 1),
            WindMs = line.Value(47, 51, "WSPD", 10),
            SinceLaunch = SinceLaunch(line),
            FieldName = Column,
        };
    }

    private static string Column(string name) => name switch
    {
        "pressureHpa" => "PRESS",
        "heightM" => "GPH",
        "temperatureC" => "TEMP",
        "dewPointC" => "DPDP",
        "windDirectionDeg" => "WDIR",
        _ => "WSPD",
    };

    // MMMSS: minutes and seconds since release.
    private static TimeSpan? SinceLaunch(IgraLine line) =>
        line.Whole(4, 8) is >= 0 and var time ? TimeSpan.FromSeconds((60 * (time / 100)) + (time % 100)) : null;

    private static TimeOnly? Release(int? hhmm) =>
        hhmm is >= 0 and < 2400 and var time && time % 100 < 60 ? new(time / 100, time % 100) : null;

    // Hour 99 is unknown; then the release time dates the ascent.
    private static DateTimeOffset? Time((int? Year, int? Month, int? Day) date, int? hour, TimeOnly? release) =>
        date is ({ } year, { } month and >= 1 and <= 12, { } day and >= 1) && day <= DateTime.DaysInMonth(year, month)
            ? hour is >= 0 and < 24 ? new DateTimeOffset(year, month, day, hour.Value, 0, 0, TimeSpan.Zero)
                : release is { } at ? new DateTimeOffset(year, month, day, at.Hour, at.Minute, 0, TimeSpan.Zero)
                : null
            : null;

    private static Position? Place(IgraLine header) =>
        (header.Whole(56, 62), header.Whole(64, 71)) is ({ } latitude and >= -900_000 and <= 900_000, { } longitude and >= -1_800_000 and <= 1_800_000)
            ? Position.FromDegrees(latitude / 1e4, longitude / 1e4)
            : null;
}
