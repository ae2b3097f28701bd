using DayBrief.BoundaryLayer;
using DayBrief.House;
using DayBrief.Reports;
using DayBrief.Soundings;
using DayBrief.Units;

namespace DayBrief.Days;

/// <summary>A day that gives no cause for any caution, of which a test changes one thing. Its figures are invented.</summary>
internal sealed record HazardCase
{
    private static readonly Lazy<Brief> Computed = new(() => Brief.Prepare(new()
    {
        Sounding = SoundingReader.Read(File.ReadAllBytes(Path.Combine(Repository.Root, "soundings", "anticyclone-short-dry.csv")), "quiet.csv"),
        Site = new()
        {
            Position = Position.FromDegrees(52.24, -1.41),
            Elevation = Altitude.FromMetres(100),
            TimeZone = TimeZoneInfo.FindSystemTimeZoneById("Europe/London"),
        },
        Date = new(2026, 2, 20),
        Assumptions = new() { EnsembleSize = 0 },
        PreparedAt = default,
    }));

    public Site Site { get; init; } = Computed.Value.Site;

    public Position? At { get; init; }

    public DateOnly Date { get; init; } = new(2026, 2, 20);

    /// <summary>Wind of the ascent at the ground is never used: this one by hour is.</summary>
    public DayAssumptions Assumptions { get; init; } =
        new() { EnsembleSize = 0, Qnh = Pressure.FromHectopascals(1013.25), WindByHour = [new(new(8, 0), Wind.From(240, Speed.FromKnots(5)))] };

    public CloudOutlook Cloud { get; init; } = new() { Dry = true, Reasons = [] };

    public double TopM { get; init; } = 1500;

    public Func<int, double> TopAt { get; init; } = _ => double.NaN;

    public double? BaseM { get; init; }

    /// <summary>Winds of the ascent by height, kt from 240°; null for none.</summary>
    public (double Metres, double Kt)[]? Winds { get; init; }

    public double ClimbMs { get; init; } = 2;

    public double MaxC { get; init; } = 15;

    public double RadiusM { get; init; } = 150;

    public double SpacingM { get; init; } = 2000;

    public WindInLayer? Aloft { get; init; }

    public bool Flyable { get; init; } = true;

    public ThermalKind Kind { get; init; } = ThermalKind.Broad;

    public TimeSpan LastBeforeSunset { get; init; } = TimeSpan.FromHours(2);

    /// <summary>Above the field.</summary>
    public double? FreezingM { get; init; }

    public double? KIndex { get; init; } = 0;

    public double CapeJkg { get; init; }

    public string? Metar { get; init; }

    public string? Taf { get; init; }

    public IReadOnlyList<Hazard> Hazards() => Days.Hazards.Of(Made());

    public Brief Made()
    {
        var computed = Computed.Value;
        var site = Site with { Position = At ?? Site.Position };
        var sun = SunDay.Of(site.Position, Date, site.TimeZone);
        return new()
        {
            Site = site,
            Date = Date,
            PreparedAt = default,
            Observation = Metar is null ? null : MetarReader.Read(Metar),
            Forecast = Taf is null ? null : TafReader.Read(Taf),
            Ascent = computed.Ascent with
            {
                FreezingLevels = FreezingM is { } zero ? [Height.FromMetres(zero + computed.FieldAboveAscentM)] : [],
                FreezingLevel = FreezingM is { } lasting ? Height.FromMetres(lasting + computed.FieldAboveAscentM) : null,
                KIndex = KIndex,
                Energy = new ConvectiveEnergy(CapeJkg, 0),
                Profile = computed.Ascent.Profile,
            },
            Day = computed.Day with
            {
                Site = site,
                Assumptions = Assumptions,
                Sun = sun,
                Steps = [.. Enumerable.Range(0, 109).Select(Step)],
                Times = new() { FirstUsable = Flyable ? Time(24) : null, Last = Flyable ? sun.Sunset - LastBeforeSunset : null },
                MaxUsableTop = Flyable ? Height.FromMetres(TopM) : null,
                Cloud = Cloud,
                Wind = Aloft,
                Winds = Winds is null ? null : WindsOf(computed, Winds),
                ThermalType = new() { Kind = Flyable ? Kind : ThermalKind.None, Reasons = [] },
            },
        };
    }

    private static LayerWind? WindsOf(Brief computed, (double Metres, double Kt)[] winds)
    {
        var ascent = computed.Ascent.Sounding;
        var ground = computed.Ascent.Profile.Elevation?.Metres ?? 0;
        return LayerWind.Over(
            new()
            {
                Source = ascent.Source,
                Levels = [.. ascent.Levels.Select(level => level with { Wind = null })],
                WindsByHeight = [.. winds.Select(wind => new HeightWind(Altitude.FromMetres(ground + wind.Metres), Wind.From(240, Speed.FromKnots(wind.Kt))))],
            },
            computed.Ascent.Profile,
            0);
    }

    /// <summary>Every five minutes from 08:00; thermals from 10:00 to 15:00, the warmest at 13:00.</summary>
    private DayStep Step(int i)
    {
        var usable = Flyable && i is >= 24 and <= 84;
        var top = double.IsNaN(TopAt(i)) ? usable ? TopM : (double?)null : TopAt(i);
        return new()
        {
            Time = Time(i),
            SurfaceTemperatureC = MaxC - (Math.Abs(i - 60) / 12.0),
            UsableTopAglM = top,
            CloudBaseAglM = BaseM,
            ClimbMs = top is null ? null : ClimbMs,
            ThermalRadiusM = top is null ? null : RadiusM,
            SpacingM = top is null ? null : SpacingM,
        };
    }

    private static DateTimeOffset Time(int step) => new DateTimeOffset(2026, 2, 20, 8, 0, 0, TimeSpan.Zero).AddMinutes(5 * step);
}
