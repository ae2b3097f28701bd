using DayBrief.Flight.Terrain;
using DayBrief.Units;

namespace DayBrief.Days;

/// <summary>Every caution with its cause just missing and just there; docs/cautions.md has the thresholds and their sources.
/// The quiet day has none, so each row's caution comes from its own change.</summary>
public sealed class HazardTableTests
{
    private const string Taf = "TAF XXXX 200500Z 2006/2018 24005KT 9999 SCT040 ";
    private static readonly HazardCase Quiet = new();

    private static readonly Dictionary<string, (HazardKind Kind, HazardCase Without, HazardCase With)> Table = new()
    {
        ["thunder by the day"] = (HazardKind.Thunder, Clouds(new() { Reasons = [] }), Clouds(new() { Thunder = At(15), Reasons = [] })),
        ["thunder reported"] = (HazardKind.Thunder, Report("24005KT 9999 -RA SCT040"), Report("24005KT 9999 TS SCT040")),
        ["thunder forecast"] = (HazardKind.Thunder, Taf0("TEMPO 2012/2016 RA"), Taf0("TEMPO 2012/2016 TSRA")),
        ["thunder forecast after dark"] = (HazardKind.Thunder, Taf0("TEMPO 2018/2020 TSRA"), Taf0("TEMPO 2016/2020 TSRA")),
        ["cumulonimbus forecast"] = (HazardKind.Cumulonimbus, Taf0("TEMPO 2012/2016 SCT030"), Taf0("TEMPO 2012/2016 SCT030CB")),
        ["cumulonimbus told as thunder"] = (HazardKind.Cumulonimbus, Taf0("TEMPO 2012/2016 TSRA SCT030CB"), Taf0("TEMPO 2012/2016 SHRA SCT030CB")),
        ["cumulonimbus reported"] = (HazardKind.Cumulonimbus, Report("24005KT 9999 SCT040TCU"), Report("24005KT 9999 SCT040CB")),
        ["squall"] = (HazardKind.Squall, Taf0("TEMPO 2012/2016 SHRA"), Taf0("TEMPO 2012/2016 SQ")),
        ["funnel cloud"] = (HazardKind.FunnelCloud, Report("24005KT 9999 SHRA SCT040"), Report("24005KT 9999 FC SCT040")),
        ["hail"] = (HazardKind.Hail, Taf0("TEMPO 2012/2016 SHRA"), Taf0("TEMPO 2012/2016 SHGR")),
        ["freezing precipitation"] = (HazardKind.FreezingPrecipitation, Taf0("TEMPO 2008/2010 FZFG"), Taf0("TEMPO 2008/2010 -FZDZ")),
        ["K index without energy"] = (HazardKind.ThunderInStore, Quiet with { KIndex = 35, CapeJkg = 0 }, Quiet with { KIndex = 35, CapeJkg = 100 }),
        ["K index"] = (HazardKind.ThunderInStore, Quiet with { KIndex = 19.9, CapeJkg = 100 }, Quiet with { KIndex = 20, CapeJkg = 100 }),
        ["energy"] = (HazardKind.ThunderInStore, Quiet with { CapeJkg = 499 }, Quiet with { CapeJkg = 500 }),
        ["energy, but thunder told"] = (HazardKind.ThunderInStore, Taf0("TEMPO 2012/2016 TSRA") with { CapeJkg = 900 }, Taf0("TEMPO 2012/2016 SHRA") with { CapeJkg = 900 }),
        ["usual wind limit"] = (HazardKind.WindOverLimit, Wind(20), Wind(20.2)),
        ["usual gust limit"] = (HazardKind.GustOverLimit, Wind(18, gust: 25), Wind(18, gust: 25.2)),
        ["visibility below the usual least"] = (HazardKind.VisibilityBelowLeast, Report("24005KT 5000 HZ SCT040"), Report("24005KT 4900 HZ SCT040")),
        ["visibility below the site's least"] = (HazardKind.VisibilityBelowLeast, Limits(new() { LeastVisibilityM = 3000 }, Report("24005KT 3000 HZ SCT040")), Limits(new() { LeastVisibilityM = 3000 }, Report("24005KT 2900 HZ SCT040"))),
        ["cloud below the usual least"] = (HazardKind.CeilingBelowLeast, Report("24005KT 9999 BKN015"), Report("24005KT 9999 BKN014")),
        ["cloud below the site's least"] = (HazardKind.CeilingBelowLeast, Limits(new() { LeastCloudCeiling = Height.FromFeet(1000) }, Taf0("TEMPO 2008/2010 BKN010")), Limits(new() { LeastCloudCeiling = Height.FromFeet(1000) }, Taf0("TEMPO 2008/2010 BKN009"))),
        ["wind limit"] = (HazardKind.WindOverLimit, Limits(new() { Wind = Kt(12) }, Wind(12)), Limits(new() { Wind = Kt(12) }, Wind(12.2))),
        ["gust limit"] = (HazardKind.GustOverLimit, Limits(new() { Gust = Kt(18) }, Wind(10, gust: 18)), Limits(new() { Gust = Kt(18) }, Wind(10, gust: 18.2))),
        ["showers"] = (HazardKind.Showers, Taf0("TEMPO 2012/2016 RA"), Taf0("TEMPO 2012/2016 SHRA")),
        ["showers reported"] = (HazardKind.Showers, Report("24005KT 9999 RA SCT040"), Report("24005KT 9999 SHRA SCT040")),
        ["showers by the day"] = (HazardKind.Showers, Quiet, Clouds(new() { Showers = At(15), Reasons = [] })),
        ["tall cumulus"] = (HazardKind.Overdevelopment, Quiet, Clouds(new() { Overdevelopment = At(14), Reasons = [] })),
        ["tall cumulus reported"] = (HazardKind.Overdevelopment, Report("24005KT 9999 SCT040"), Report("24005KT 9999 SCT040TCU")),
        ["tall cumulus, told as showers"] = (HazardKind.Overdevelopment, Clouds(new() { Overdevelopment = At(14), Showers = At(15), Reasons = [] }), Clouds(new() { Overdevelopment = At(14), Reasons = [] })),
        ["spreading"] = (HazardKind.SpreadOut, Clouds(new() { SpreadOut = true, Reasons = [] }) with { Flyable = false }, Clouds(new() { SpreadOut = true, Reasons = [] })),
        ["falling air, spread"] = (HazardKind.Downdraught, Quiet, Clouds(new() { SpreadOut = true, Reasons = [] })),
        ["falling air, tall"] = (HazardKind.Downdraught, Clouds(new() { Showers = At(15), Overdevelopment = At(14), Reasons = [] }), Clouds(new() { Overdevelopment = At(14), Reasons = [] })),
        ["gusts"] = (HazardKind.Gusts, Wind(4, gust: 13.9), Wind(4, gust: 14)),
        ["surface wind"] = (HazardKind.SurfaceWind, Wind(14.9), Wind(15)),
        ["surface wind, gusts"] = (HazardKind.SurfaceWind, Wind(9, gust: 14.9), Wind(9, gust: 15)),
        ["surface wind reported"] = (HazardKind.SurfaceWind, Report("24014KT 9999 SCT040"), Report("24015KT 9999 SCT040")),
        ["surface wind forecast"] = (HazardKind.SurfaceWind, Taf0("BECMG 2011/2012 24014KT"), Taf0("BECMG 2011/2012 24015KT")),
        ["crosswind without a limit"] = (HazardKind.Crosswind, Runway(Wind(7.9, from: 330), 240), Runway(Wind(8, from: 330), 240)),
        ["crosswind along"] = (HazardKind.Crosswind, Runway(Wind(14, from: 240), 240), Runway(Wind(14, from: 280), 240)),
        ["crosswind limit"] = (HazardKind.Crosswind, Runway(Limits(Across(12), Wind(12, from: 330)), 240), Runway(Limits(Across(12), Wind(12.2, from: 330)), 240)),
        ["wind aloft"] = (HazardKind.WindAloft, Quiet with { Aloft = Aloft(false) }, Quiet with { Aloft = Aloft(true) }),
        ["wind gradient"] = (HazardKind.WindGradient, Aloft(4, (100, 13.9)), Aloft(4, (100, 14))),
        ["wind gradient, not from far above"] = (HazardKind.WindGradient, Aloft(4, (1000, 40)), Aloft(4, (100, 15), (1000, 40))),
        ["low cloud by the day"] = (HazardKind.LowCloud, Clouds(new() { FirstBase = Height.FromFeet(2000), Reasons = [] }), Clouds(new() { FirstBase = Height.FromFeet(1999), Reasons = [] })),
        ["low cloud reported"] = (HazardKind.LowCloud, Report("24005KT 9999 SCT010 BKN020"), Report("24005KT 9999 SCT010 BKN019")),
        ["low cloud, told as below the least"] = (HazardKind.LowCloud, Report("24005KT 9999 BKN014"), Report("24005KT 9999 BKN016")),
        ["low cloud forecast"] = (HazardKind.LowCloud, Taf0("TEMPO 2008/2010 BKN020"), Taf0("TEMPO 2008/2010 BKN019")),
        ["visibility"] = (HazardKind.PoorVisibility, Limits(new() { LeastVisibilityM = 1500 }, Report("24005KT 5000 HZ SCT040")), Limits(new() { LeastVisibilityM = 1500 }, Report("24005KT 4900 HZ SCT040"))),
        ["low tops"] = (HazardKind.LowTops, Quiet with { TopM = 609.7 }, Quiet with { TopM = 609.5 }),
        ["circling low, long"] = (HazardKind.LowThermalling, Quiet with { TopAt = i => i is >= 18 and <= 23 ? 400 : double.NaN }, Quiet with { TopAt = i => i is >= 17 and <= 23 ? 400 : double.NaN }),
        ["circling low, low tops"] = (HazardKind.LowThermalling, Quiet with { TopM = 914.5 }, Quiet with { TopM = 914.3 }),
        ["circling low, weak"] = (HazardKind.LowThermalling, Quiet with { ClimbMs = 1 }, Quiet with { ClimbMs = 0.99 }),
        ["together, low"] = (HazardKind.CirclingTogether, Quiet with { TopM = 914.5 }, Quiet with { TopM = 914.3 }),
        ["together, narrow"] = (HazardKind.CirclingTogether, Quiet with { RadiusM = 90 }, Quiet with { RadiusM = 89.9 }),
        ["together, few"] = (HazardKind.CirclingTogether, Quiet with { SpacingM = 3999 }, Quiet with { SpacingM = 4000 }),
        ["hills"] = (HazardKind.Terrain, Land(TerrainKind.Flat), Land(TerrainKind.Hills)),
        ["mountains without thermals"] = (HazardKind.Terrain, Land(TerrainKind.Mountains) with { Flyable = false }, Land(TerrainKind.Mountains)),
        ["ceiling"] = (HazardKind.Ceiling, Limits(new() { Ceiling = Altitude.FromMetres(1600) }, Quiet), Limits(new() { Ceiling = Altitude.FromMetres(1599) }, Quiet)),
        ["distance from cloud"] = (HazardKind.CloudClearance, Quiet with { BaseM = 1801 }, Quiet with { BaseM = 1800 }),
        ["freezing level"] = (HazardKind.Icing, Freezing(1500), Freezing(1499)),
        ["oxygen"] = (HazardKind.Oxygen, Quiet with { TopM = 2947.9 }, Quiet with { TopM = 2948.1 }),
        ["density altitude"] = (HazardKind.DensityAltitude, Quiet with { MaxC = 27.1 }, Quiet with { MaxC = 27.4 }),
        ["heat"] = (HazardKind.Heat, Quiet with { MaxC = 29.9 }, Quiet with { MaxC = 30 }),
        ["cold"] = (HazardKind.Cold, Quiet with { MaxC = 5.1 }, Quiet with { MaxC = 5 }),
        ["ultraviolet"] = (HazardKind.Ultraviolet, Sunlit(45.6), Sunlit(44.8)),
        ["sudden end"] = (HazardKind.SuddenEnd, Quiet with { Kind = ThermalKind.Broad }, Quiet with { Kind = ThermalKind.ShortLived }),
        ["last light"] = (HazardKind.LastLight, Quiet with { LastBeforeSunset = TimeSpan.FromMinutes(60) }, Quiet with { LastBeforeSunset = TimeSpan.FromMinutes(59) }),
    };

    public static TheoryData<string> Rows => [.. Table.Keys];

    [Theory]
    [MemberData(nameof(Rows))]
    public void A_caution_has_its_cause_and_a_cause_its_caution(string row)
    {
        var (kind, without, with) = Table[row];
        Assert.DoesNotContain(without.Hazards(), hazard => hazard.Kind == kind);
        Assert.Contains(with.Hazards(), hazard => hazard.Kind == kind);
    }

    [Fact]
    public void A_day_without_any_cause_has_no_caution() => Assert.Empty(Quiet.Hazards());

    [Fact]
    public void Every_kind_has_its_row() =>
        Assert.Empty(Enum.GetValues<HazardKind>().Except(Table.Values.Select(row => row.Kind)));

    private static DateTimeOffset At(int hour) => new(2026, 2, 20, hour, 0, 0, TimeSpan.Zero);

    private static Speed Kt(double knots) => Speed.FromKnots(knots);

    private static HazardCase Clouds(CloudOutlook cloud) => Quiet with { Cloud = cloud };

    private static HazardCase Report(string body) =>
        Quiet with { Metar = $"METAR XXXX 200920Z {body} 12/08 Q1013", Assumptions = Quiet.Assumptions with { WindByHour = [] } };

    private static HazardCase Taf0(string change) => Quiet with { Taf = Taf + change };

    private static HazardCase Wind(double knots, double from = 240, double? gust = null) => Quiet with
    {
        Assumptions = Quiet.Assumptions with
        {
            WindByHour = [new(new(8, 0), Units.Wind.From(from, Kt(knots)), gust is { } most ? Kt(most) : null)],
        },
    };

    private static SiteLimits Across(double knots) => new() { Crosswind = new() { CrossCountry = Kt(knots) } };

    private static HazardCase Limits(SiteLimits limits, HazardCase of) => of with { Site = of.Site with { Limits = limits } };

    private static HazardCase Runway(HazardCase of, double heading) => of with { Site = of.Site with { Runways = [new("24", heading)] } };

    private static HazardCase Land(TerrainKind kind) => Quiet with { Site = Quiet.Site with { TerrainKind = kind } };

    private static HazardCase Freezing(double metres) => Quiet with { FreezingM = metres };

    /// <summary>On 20 February the sun's declination is −11.1°, so at noon it stands 33.3° high at 45.6° and 34.1° at 44.8°
    /// north; the index is 3 at 33.7°.</summary>
    private static HazardCase Sunlit(double latitude) => Quiet with { At = Position.FromDegrees(latitude, -1.41) };

    /// <summary>Winds of an ascent, kt at heights above the ground, all from one direction.</summary>
    private static HazardCase Aloft(double groundKt, params (double Metres, double Kt)[] above) =>
        Quiet with { Winds = [(10, groundKt), .. above] };

    private static WindInLayer Aloft(bool tooMuch) => new()
    {
        Top = Height.FromMetres(1500),
        Mean = Units.Wind.From(240, Kt(20)),
        ShearMsPerKm = 3,
        DriftIn10Minutes = Height.FromMetres(6000),
        TooMuch = tooMuch,
        Reasons = [],
    };
}
