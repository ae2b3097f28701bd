using DayBrief.BoundaryLayer;
using DayBrief.Soundings;
using DayBrief.Units;

namespace DayBrief.Days;

/// <summary>What all computations of one day share: its times, the sun, the cloud, the ground and the air above it.</summary>
internal sealed record DayFrame
{
    public const int StepSeconds = 300;

    private const double FrictionDepthM = 500;

    private DayFrame(
        Site site, DayAssumptions assumptions, SunDay sun, SiteColumn air, LayerWind? winds, DateTimeOffset[] times, int first)
    {
        (Site, Assumptions, Sun, Air, Times, FirstStep) = (site, assumptions, sun, air, times, first);
        Winds = winds;
        WindMs = winds?.Mean(Height.FromMetres(FrictionDepthM)).Speed.MetresPerSecond ?? SurfaceLayer.UnknownWindMs;
        Surface = GroundSurface.Of(site.GroundCover, site.GroundWetness);
        Density = air.SurfaceHpa * 100 / (Thermodynamics.Air.GasConstant * air.SurfaceKelvins * 1.005);
        var halves = (2 * times.Length) - 1;
        (SinElevation, Cover) = (new double[halves], new double[halves]);
        for (var i = 0; i < halves; i++)
        {
            var time = times[0].AddSeconds(i * StepSeconds / 2.0);
            SinElevation[i] = BoundaryLayer.Sun.At(site.Position, time).CosZenith;
            Cover[i] = assumptions.CloudAt(TimeOnly.FromTimeSpan(times[i / 2].TimeOfDay)) / 8;
        }

        MaximumStep = MaximumStepOf(times, assumptions.MaximumAt);
        if (assumptions.Flux is { } flux)
            Prescribed = [.. Enumerable.Range(0, halves).Select(i => flux.At(times[0].AddSeconds(i * StepSeconds / 2.0)) ?? default)];
    }

    public Site Site { get; }

    /// <summary>Nobody waits for it any more.</summary>
    public CancellationToken Stopping { get; init; }

    public DayAssumptions Assumptions { get; }

    public SunDay Sun { get; }

    public SiteColumn Air { get; }

    public DateTimeOffset[] Times { get; }

    /// <summary>Index of the first step at which the ascent is valid.</summary>
    public int FirstStep { get; }

    /// <summary>Index of the step at which the maximum is reached; −1 where it is the greatest of the day.</summary>
    public int MaximumStep { get; }

    /// <summary>How the air changes through the day; null where only the ascent is known.</summary>
    public AirByHour? Hourly { get; private init; }

    /// <summary>The winds at a step.</summary>
    public LayerWind? WindsAt(int step) => Hourly?.WindsAt(Times[step]) ?? Winds;

    /// <summary>Heat that the ground takes from the air between the ascent and the first step, K m.</summary>
    public double NightChill { get; private init; }

    /// <summary>Winds over the site; null when the ascent has none.</summary>
    public LayerWind? Winds { get; }

    /// <summary>Mean wind of the lowest 1000 m, for the friction at the ground.</summary>
    public double WindMs { get; }

    public GroundSurface Surface { get; }

    /// <summary>Density of the air at the ground, kg/m³.</summary>
    public double Density { get; }

    /// <summary>Sine of the sun's elevation at each half step.</summary>
    public double[] SinElevation { get; }

    /// <summary>Assumed cloud at each half step, 0 to 1.</summary>
    public double[] Cover { get; }

    /// <summary>Prescribed fluxes at each half step, if any.</summary>
    public FluxPoint[]? Prescribed { get; }

    public static DayFrame Of(
        Sounding sounding, Profile profile, Site site, DateOnly date, DayAssumptions assumptions, List<Caution> cautions)
    {
        var sun = SunDay.Of(site.Position, date, site.TimeZone);
        var air = SiteColumn.Of(profile, site, cautions);
        var times = Grid(sun, date, site.TimeZone, assumptions.Flux);
        var valid = sounding.Source.ValidAt ?? AscentTime.Guess(sounding.Source, sun.Noon);
        AscentTime.Judge(valid, sun, cautions);
        var first = valid is { } at ? Math.Max(0, Array.FindIndex(times, time => time.AddSeconds(StepSeconds / 2) >= at)) : 0;
        if (valid > times[^1])
            first = times.Length;
        return new(site, assumptions, sun, air, LayerWind.Over(sounding, profile, air.GroundM), times, first)
        {
            Hourly = LaterAir(sounding, valid, site, assumptions, cautions),
            NightChill = assumptions is { Flux: null, Plain: false } ? Days.NightChill.Before(times[0], valid, sun, assumptions.CloudAt(default)) : 0,
        };
    }

    private static AirByHour? LaterAir(
        Sounding sounding, DateTimeOffset? valid, Site site, DayAssumptions assumptions, List<Caution> cautions)
    {
        if (assumptions.Air.IsDefaultOrEmpty)
            return null;
        var later = AirByHour.Of(sounding, valid, site, assumptions.Air);
        cautions.Add(later is null
            ? new("air-not-used", Phrase.Of($"The later profiles do not say of when they are, or there is only one: the air aloft stays as the ascent has it."))
            : new("air-by-hour", Phrase.Of($"The air aloft changes as {later.Extent.Count} profiles have it, from {TimeZoneInfo.ConvertTime(later.Extent.From, site.TimeZone):HH:mm} to {TimeZoneInfo.ConvertTime(later.Extent.To, site.TimeZone):HH:mm}.")));
        return later;
    }

    private static int MaximumStepOf(DateTimeOffset[] times, TimeOnly? at) => at is { } wanted
        ? Enumerable.Range(0, times.Length).MinBy(i => Math.Abs((times[i].TimeOfDay - wanted.ToTimeSpan()).TotalMinutes))
        : -1;

    /// <summary>Every 5 minutes of local time while the sun is up or fluxes are given; the whole day where it never sets
    /// or never rises.</summary>
    private static DateTimeOffset[] Grid(SunDay sun, DateOnly date, TimeZoneInfo zone, FluxSeries? flux)
    {
        var midnight = Midnight(date, zone);
        var from = sun.Sunrise ?? midnight;
        var to = sun.Sunset ?? Midnight(date.AddDays(1), zone);
        if (flux is not null)
        {
            from = Earlier(from, Later(flux.Points[0].Time, midnight.AddDays(-1)));
            to = Later(to, Earlier(flux.Points[^1].Time, midnight.AddDays(2)));
        }

        var step = TimeSpan.FromSeconds(StepSeconds).Ticks;
        var start = from.UtcTicks / step * step;
        var count = (int)((to.UtcTicks - start + step - 1) / step) + 1;
        return [.. Enumerable.Range(0, count)
            .Select(i => TimeZoneInfo.ConvertTime(new DateTimeOffset(start + (i * step), TimeSpan.Zero), zone))];
    }

    private static DateTimeOffset Midnight(DateOnly date, TimeZoneInfo zone)
    {
        var local = date.ToDateTime(TimeOnly.MinValue);
        return new(local, zone.GetUtcOffset(local));
    }

    private static DateTimeOffset Earlier(DateTimeOffset a, DateTimeOffset b) => a < b ? a : b;

    private static DateTimeOffset Later(DateTimeOffset a, DateTimeOffset b) => a > b ? a : b;
}
