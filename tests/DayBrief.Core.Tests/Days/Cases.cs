using System.Globalization;
using DayBrief.House;
using DayBrief.Soundings;
using DayBrief.Units;

namespace DayBrief.Days;

/// <summary>Reads the shared published cases and runs the day over them.</summary>
internal static class Cases
{
    /// <summary>One morning and afternoon ascent with what the model makes of the morning.</summary>
    /// <param name="Site">Site of the pair.</param>
    /// <param name="Id">Its name.</param>
    /// <param name="ObservedM">Depth of the afternoon ascent.</param>
    /// <param name="PlainM">The plain parcel method's depth.</param>
    /// <param name="Day">The computed day.</param>
    /// <param name="Free">The same without a given maximum.</param>
    /// <param name="Step">Index of the step at the time of the afternoon ascent.</param>
    /// <param name="Inputs">The morning, to compute it otherwise.</param>
    public sealed record Pair(
        string Site, string Id, double ObservedM, double PlainM, ConvectiveDay Day, ConvectiveDay Free, int Step, PairInputs Inputs)
    {
        public double AtM => DepthOf(Day);

        public double FreeAtM => DepthOf(Free);

        public bool InRange => Holds(Day);

        public bool FreeInRange => Holds(Free);

        public double DepthOf(ConvectiveDay day) => day.Steps[Step].MixedLayerDepthM ?? 0;

        private bool Holds(ConvectiveDay day) => day.DepthBand[Step].P10 <= ObservedM && ObservedM <= day.DepthBand[Step].P90;
    }

    /// <summary>A morning as it is given.</summary>
    public sealed record PairInputs(Sounding Morning, Sounding Afternoon, Site Site, DateOnly Date, DayAssumptions Given)
    {
        public ConvectiveDay Compute(DayAssumptions assumptions) => ConvectiveDay.Compute(Morning, Site, Date, assumptions);
    }

    /// <summary>All 75 pairs of three sites, computed once.</summary>
    public static Lazy<IReadOnlyList<Pair>> Pairs { get; } = new(() =>
    [
        .. new[] { "pairs.csv", "kirov.csv" }.SelectMany(file =>
        {
            var table = CaseTable.Read(Repository.Shared("cases", "pairs", file));
            return Enumerable.Range(0, table.Count).AsParallel().AsOrdered().Select(row => PairOf(table, row));
        }),
    ]);

    public static ConvectiveDay Arm()
    {
        var table = CaseTable.Read(Repository.Shared("cases", "arm_shcu", "sounding_1130UTC.csv"));
        var flux = CaseTable.Read(Repository.Shared("cases", "arm_shcu", "surface_flux.csv"));
        var sounding = Ascent("arm", 318, Utc("1997-06-21T11:30Z"), Levels(table, "Td_C"));
        var series = new FluxSeries(Enumerable.Range(0, flux.Count).Select(row => new FluxPoint(
            Utc("1997-06-21T00:00Z").AddHours(flux.Number(row, "hour_UTC")!.Value),
            flux.Number(row, "H_Wm2")!.Value,
            flux.Number(row, "LE_Wm2")!.Value)));
        return ConvectiveDay.Compute(
            sounding, SiteAt(36.62, -97.5, 318, -6), new(1997, 6, 21), new() { Flux = series, EnsembleSize = 0 });
    }

    /// <summary>Wangara Day 33 with one of the published fluxes: "Golaz2002", "NN09" (both kinematic) or "Hicks" (W/m²).</summary>
    public static ConvectiveDay Wangara(string flux)
    {
        var table = CaseTable.Read(Repository.Shared("cases", "wangara", "sounding_0900.csv"));
        var fluxes = CaseTable.Read(Repository.Shared("cases", "wangara", "fluxes.csv"));
        var sounding = Ascent("wangara", 90, Utc("1967-08-15T23:00Z"), Levels(table, "Td_C"));
        var series = new FluxSeries(Enumerable.Range(0, fluxes.Count - 1).Select(row => new FluxPoint(
            Utc("1967-08-15T14:00Z").AddHours(fluxes.Number(row, "hour_LST")!.Value), Sensible(fluxes, row, flux), Latent(fluxes, row, flux))));
        return ConvectiveDay.Compute(
            sounding, SiteAt(-34.5, 144.93, 90, 10), new(1967, 8, 16), new() { Flux = series, EnsembleSize = 0 });
    }

    public static DayStep At(ConvectiveDay day, int hour, int minute = 0) =>
        day.Steps.First(step => step.Time.Hour == hour && step.Time.Minute == minute);

    public static Site SiteAt(double latitude, double longitude, double elevationM, double utcOffsetHours) => new()
    {
        Position = Position.FromDegrees(latitude, longitude),
        Elevation = Altitude.FromMetres(elevationM),
        TimeZone = TimeZoneInfo.CreateCustomTimeZone($"UTC{utcOffsetHours}", TimeSpan.FromHours(utcOffsetHours), "zone", "zone"),
    };

    public static Sounding Ascent(string name, double? elevationM, DateTimeOffset? validAt, IEnumerable<SoundingLevel> levels) => new()
    {
        Source = new()
        {
            Name = name,
            Format = "case",
            Elevation = elevationM is { } metres ? Altitude.FromMetres(metres) : null,
            ValidAt = validAt,
        },
        Levels = [.. levels],
    };

    public static SoundingLevel Level(double hpa, double? celsius, double? dewPointCelsius = null, Wind? wind = null) => new()
    {
        Pressure = Pressure.FromHectopascals(hpa),
        Temperature = Celsius(celsius),
        DewPoint = Celsius(dewPointCelsius),
        Wind = wind,
    };

    public static DateTimeOffset Utc(string text) =>
        DateTimeOffset.Parse(text, CultureInfo.InvariantCulture, DateTimeStyles.AssumeUniversal);

    // Air of the morning ascent, 1.27 kg/m³ and 1005 J/kg/K, turns the kinematic fluxes into W/m².
    private static double Sensible(CaseTable fluxes, int row, string flux) => flux == "Hicks"
        ? fluxes.Number(row, "H_obs_Wm2")!.Value
        : 1.27 * 1005 * fluxes.Number(row, $"wtheta_{flux}_Kms")!.Value;

    private static double Latent(CaseTable fluxes, int row, string flux) =>
        1.27 * 2.5e3 * fluxes.Number(row, flux == "NN09" ? "wq_NN09_gkg_ms" : "wr_Golaz_gkg_ms")!.Value;

    private static Pair PairOf(CaseTable table, int row)
    {
        var (site, id) = (table.Text(row, "site"), table.Text(row, "id"));
        var elevation = table.Number(row, "elev_m")!.Value;
        var offset = table.Number(row, "utc_offset_h")!.Value;
        var morning = Utc(table.Text(row, "morning_nominal_UTC"));
        var file = CaseTable.Read(Repository.Shared("cases", "pairs", site, $"{id}_morning.csv"));
        // Balloons of the nominal hours 00 and 12 UTC leave up to an hour before; the Great Plains' were timed.
        var at = Utc(table.Text(row, "afternoon_nominal_UTC")).AddMinutes(site switch { "KNKX" => -60, "USKK" => -30, _ => 0 });
        var inputs = new PairInputs(
            Ascent(id, elevation, morning, Levels(file, "Td_C")),
            Ascent(id, elevation, at, Levels(CaseTable.Read(Repository.Shared("cases", "pairs", site, $"{id}_afternoon.csv")), "Td_C")),
            SiteAt(table.Number(row, "lat")!.Value, table.Number(row, "lon")!.Value, elevation, offset),
            DateOnly.FromDateTime(morning.UtcDateTime.AddHours(offset)),
            new()
            {
                MaxTemperature = Temperature.FromCelsius(table.Number(row, "T_given_C")!.Value),
                MaximumAt = TimeOnly.FromDateTime(at.UtcDateTime.AddHours(offset)),
                EnsembleSize = 200,
            });
        var day = inputs.Compute(inputs.Given);
        return new(
            site,
            id,
            table.Number(row, site == "USKK" ? "h_obs_layer_plus0p5_m" : "h_obs_use_m")!.Value,
            table.Number(row, "parcel_from_morning_with_T_given_m")!.Value,
            day,
            inputs.Compute(new() { EnsembleSize = 200 }),
            day.Steps.TakeWhile(step => step.Time < at).Count(),
            inputs);
    }

    private static IEnumerable<SoundingLevel> Levels(CaseTable table, string dewPoint) =>
        Enumerable.Range(0, table.Count)
            .Where(row => table.Number(row, "T_C") is not null)
            .Select(row => Level(
                table.Number(row, "p_hPa")!.Value,
                table.Number(row, "T_C"),
                table.Number(row, dewPoint),
                table.Has("wind_dir_deg") ? WindOf(table.Number(row, "wind_dir_deg"), table.Number(row, "wind_speed_ms")) : null));

    private static Temperature? Celsius(double? value) => value is { } known ? Temperature.FromCelsius(known) : null;

    private static Wind? WindOf(double? degrees, double? ms) =>
        degrees is { } from && ms is { } speed ? Wind.From(from % 360, Speed.FromMetresPerSecond(speed)) : null;
}
