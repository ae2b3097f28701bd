using DayBrief.Units;

namespace DayBrief.BoundaryLayer;

public sealed class SunTests
{
    private static readonly Position Golden = Position.FromDegrees(39.742476, -105.1786);
    private static readonly TimeZoneInfo Mst = TimeZoneInfo.CreateCustomTimeZone("MST", TimeSpan.FromHours(-7), "MST", "MST");

    /// <summary>[Meeus1998] example 25.a (1992 October 13, 0 h TD), printed in full; the low-accuracy set is good to
    /// 0.01° and was made for this example, so 0.001°.</summary>
    [Fact]
    public void Longitude_and_declination_match_Meeus_example_25a()
    {
        var t = Sun.CenturiesSince2000(new DateTimeOffset(1992, 10, 13, 0, 0, 0, TimeSpan.Zero));
        Assert.Equal(199.90895, ((Sun.ApparentLongitude(t) % 360) + 360) % 360, tolerance: 0.001);
        Assert.Equal(-7.78507, Sun.Apparent(t).DeclinationRadians * 180 / Math.PI, tolerance: 0.001);
    }

    /// <summary>[Meeus1998] example 28.b, same instant: +13 min 42.7 s; Smart's series is good to a few seconds.</summary>
    [Fact]
    public void Equation_of_time_matches_Meeus_example_28b()
    {
        var t = Sun.CenturiesSince2000(new DateTimeOffset(1992, 10, 13, 0, 0, 0, TimeSpan.Zero));
        Assert.Equal(13 + (42.7 / 60), Sun.Apparent(t).EquationOfTimeMinutes, tolerance: 3 / 60.0);
    }

    /// <summary>[RedaAndreas2004] reference case: true elevation 39.872046°, azimuth 194.340241°; 0.05° and 0.05° are
    /// far finer than the heating needs.</summary>
    [Fact]
    public void Position_matches_the_SPA_reference_case()
    {
        var sun = Sun.At(Golden, new DateTimeOffset(2003, 10, 17, 12, 30, 30, TimeSpan.FromHours(-7)));
        Assert.Equal(39.872046, sun.ElevationDegrees, tolerance: 0.05);
        Assert.Equal(194.340241, sun.AzimuthDegrees, tolerance: 0.05);
    }

    /// <summary>[RedaAndreas2004] rise, transit and set as public unit tests of an open library print them; one minute
    /// is the promise of the brief. The printed events are those of a UTC date: the set of 2 August UTC (02:13:58) is the
    /// evening of 1 August there, which the shortening of the days also shows.</summary>
    [Theory]
    [InlineData("2015-01-02", "07:21:55", "12:04:45", "2015-01-02", "16:47:43")]
    [InlineData("2015-08-02", "05:00:27", "12:06:58", "2015-08-01", "19:13:58")]
    public void Rise_noon_and_set_match_the_SPA_values_for_Golden(
        string date, string rise, string noon, string dateOfSet, string set)
    {
        var day = SunDay.Of(Golden, DateOnly.Parse(date), Mst);
        AssertWithinAMinute(rise, day.Sunrise);
        AssertWithinAMinute(noon, day.Noon);
        AssertWithinAMinute(set, SunDay.Of(Golden, DateOnly.Parse(dateOfSet), Mst).Sunset);
    }

    /// <summary>[RedaAndreas2004] Table A5.1 places: 35° S, 0° E.</summary>
    [Theory]
    [InlineData("1996-07-05", "07:08:15", "17:01:04")]
    [InlineData("2004-12-04", "04:38:57", "19:02:03")]
    public void Rise_and_set_match_the_SPA_values_in_the_south(string date, string rise, string set)
    {
        var day = SunDay.Of(Position.FromDegrees(-35, 0), DateOnly.Parse(date), TimeZoneInfo.Utc);
        AssertWithinAMinute(rise, day.Sunrise);
        AssertWithinAMinute(set, day.Sunset);
    }

    /// <summary>At 80° north the sun's declination of ±23° leaves no rising or setting at the solstices.</summary>
    [Fact]
    public void Polar_day_and_night_have_no_sunrise()
    {
        var place = Position.FromDegrees(80, 20);
        var summer = SunDay.Of(place, new DateOnly(2026, 6, 21), TimeZoneInfo.Utc);
        var winter = SunDay.Of(place, new DateOnly(2026, 12, 21), TimeZoneInfo.Utc);
        Assert.True(summer is { IsPolarDay: true, IsPolarNight: false, Sunrise: null, Sunset: null });
        Assert.True(winter is { IsPolarDay: false, IsPolarNight: true, Sunrise: null, Sunset: null });
    }

    /// <summary>By definition: the date asked for is the local one, also where the clock runs 13 h ahead of Greenwich
    /// at 172° west.</summary>
    [Theory]
    [InlineData(-172, 13)]
    [InlineData(179, 12)]
    [InlineData(-157, -10)]
    public void Noon_falls_on_the_local_date(double longitude, int offsetHours)
    {
        var zone = TimeZoneInfo.CreateCustomTimeZone("z", TimeSpan.FromHours(offsetHours), "z", "z");
        var date = new DateOnly(2026, 3, 1);
        var day = SunDay.Of(Position.FromDegrees(-13, longitude), date, zone);
        Assert.Equal(date, DateOnly.FromDateTime(day.Noon.DateTime));
        Assert.True(day.CivilDawn < day.Sunrise && day.Sunrise < day.Noon && day.Noon < day.Sunset && day.Sunset < day.CivilDusk);
    }

    private static void AssertWithinAMinute(string expected, DateTimeOffset? actual) =>
        Assert.InRange((actual!.Value.TimeOfDay - TimeSpan.Parse(expected)).TotalSeconds, -60, 60);
}
