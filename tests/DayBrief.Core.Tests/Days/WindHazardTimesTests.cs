using DayBrief.Units;

namespace DayBrief.Days;

/// <summary>Cautions of the wind name the runway, the time from and to, and whose limit is passed.</summary>
public sealed class WindHazardTimesTests
{
    private static readonly HazardCase Quiet = new();

    /// <summary>12 kt from 330° lie right across a runway of 240° (sin 90° = 1).</summary>
    [Fact]
    public void Crosswind_names_the_runway_the_time_and_the_limits_passed()
    {
        var hazard = Assert.Single(Crossed(Hour(8, 330, 5), Hour(11, 330, 12), Hour(13, 330, 11), Hour(15, 240, 12)).Hazards());
        Assert.Equal((HazardKind.Crosswind, "06/24"), (hazard.Kind, hazard.About));
        Assert.Equal((new TimeSpan(11, 0, 0), new TimeSpan(15, 0, 0)), (hazard.From!.Value.TimeOfDay, hazard.To!.Value.TimeOfDay));
        Assert.Equal(12, Speed.FromMetresPerSecond(hazard.Value!.Value).Knots, tolerance: 1e-6);
        Assert.Equal([CrosswindGroup.BeforeSolo, CrosswindGroup.LocalSolo], hazard.Passed.Select(passed => passed.Group!.Value));
    }

    [Fact]
    public void Two_spells_of_crosswind_are_told_apart() =>
        Assert.Equal(
            [9, 14],
            Crossed(Hour(8, 240, 5), Hour(9, 330, 10), Hour(11, 240, 5), Hour(14, 330, 14), Hour(16, 240, 5)).Hazards().Select(hazard => hazard.From!.Value.Hour));

    [Fact]
    public void Gusts_count_across_the_runway() =>
        Assert.Contains(Crossed(Hour(8, 330, 7, gust: 9)).Hazards(), hazard => hazard.Kind == HazardKind.Crosswind);

    [Fact]
    public void A_wind_of_no_direction_gives_no_crosswind() =>
        Assert.DoesNotContain(
            (Crossed() with { Metar = "METAR XXXX 200920Z VRB12KT 9999 SCT040 12/08 Q1013" }).Hazards(), hazard => hazard.Kind == HazardKind.Crosswind);

    [Fact]
    public void A_forecast_stronger_than_what_is_assumed_is_told_with_its_station()
    {
        var told = (Quiet with
        {
            Assumptions = Quiet.Assumptions with { WindByHour = [Hour(8, 240, 16)] },
            Taf = "TAF XXXX 200500Z 2006/2018 24005KT 9999 SCT040 BECMG 2012/2013 24018KT",
        }).Hazards().Where(hazard => hazard.Kind == HazardKind.SurfaceWind).ToArray();
        Assert.Equal([WindSource.Assumed, WindSource.Forecast], told.Select(hazard => hazard.Source!.Value));
        Assert.Equal((12, "XXXX"), (told[1].From!.Value.Hour, told[1].About));
    }

    [Fact]
    public void A_forecast_weaker_than_what_is_assumed_adds_nothing() =>
        Assert.Single((Quiet with
        {
            Assumptions = Quiet.Assumptions with { WindByHour = [Hour(8, 240, 18)] },
            Taf = "TAF XXXX 200500Z 2006/2018 24016KT 9999 SCT040",
        }).Hazards());

    /// <summary>Local 11:00 is 10:00 UTC after the clocks went forward that morning (29 March 2026) and 11:00 UTC after they
    /// went back (25 October 2026): Europe/London of the IANA data.</summary>
    [Theory]
    [InlineData(2026, 3, 29, 10)]
    [InlineData(2026, 10, 25, 11)]
    public void Hours_are_local_on_the_days_of_both_clock_changes(int year, int month, int day, int utcHour)
    {
        var changed = Crossed(Hour(8, 240, 5), Hour(11, 330, 12)) with { Date = new(year, month, day) };
        var across = changed.Hazards().Single(hazard => hazard.Kind == HazardKind.Crosswind);
        Assert.Equal(utcHour, across.From!.Value.UtcDateTime.Hour);
        Assert.Equal(changed.Made().Day.Sun.Sunset, across.To);
    }

    /// <summary>At 64° north in June the sun sets after midnight; the evening's wind lasts until then.</summary>
    [Fact]
    public void A_wind_lasts_until_a_sunset_after_midnight()
    {
        var north = Crossed(Hour(8, 240, 5), Hour(22, 330, 12)) with { Date = new(2026, 6, 21) };
        north = north with { Site = north.Site with { Position = Position.FromDegrees(64.1, -21.9), TimeZone = TimeZoneInfo.Utc } };
        var across = north.Hazards().Single(hazard => hazard.Kind == HazardKind.Crosswind);
        Assert.Equal((21, 22), (across.From!.Value.Day, across.To!.Value.Day));
    }

    private static HazardCase Crossed(params WindFrom[] winds) => Quiet with
    {
        Assumptions = Quiet.Assumptions with { WindByHour = [.. winds] },
        Site = Quiet.Site with
        {
            Runways = [new("06", 60), new("24", 240)],
            Limits = new() { Crosswind = new() { BeforeSolo = Speed.FromKnots(8), LocalSolo = Speed.FromKnots(10), CrossCountry = Speed.FromKnots(15) } },
        },
    };

    private static WindFrom Hour(int hour, double from, double knots, double? gust = null) =>
        new(new(hour, 0), Wind.From(from, Speed.FromKnots(knots)), gust is { } most ? Speed.FromKnots(most) : null);
}
