using DayBrief.Units;

namespace DayBrief.Soundings.Formats.Temp;

public sealed class TempReportTests
{
    /// <summary>Part A of message A, decoded by hand with the rules of [WMO306]; winds in knots (day figures 72).</summary>
    [Theory]
    [InlineData(1000, 89, 24.4, 22.8, 180, 6)]
    [InlineData(925, 772, 21.2, 20.7, 205, 40)]
    [InlineData(850, 1503, 17.2, 15.4, 220, 44)]
    [InlineData(700, 3136, 9.0, 5.0, 235, 38)]
    [InlineData(500, 5840, -7.1, -48.1, 245, 32)]
    [InlineData(300, 9620, -35.3, -62.3, 250, 47)]
    [InlineData(250, 10860, -43.7, -65.7, 245, 60)]
    [InlineData(100, 16530, -71.1, -82.1, 245, 43)]
    public void Standard_levels_of_message_A(double hpa, double metres, double celsius, double dewPoint, double degrees, double knots)
    {
        var level = At(Text.Read(DomainMessages.A), hpa);
        Assert.Equal(metres, level.Height!.Value.Metres);
        Assert.Equal(celsius, level.Temperature!.Value.Celsius, tolerance: 1e-9);
        Assert.Equal(dewPoint, level.DewPoint!.Value.Celsius, tolerance: 1e-9);
        Assert.Equal(degrees, level.Wind!.Value.FromDegrees);
        Assert.Equal(knots, level.Wind!.Value.Speed.Knots, tolerance: 1e-9);
    }

    [Fact]
    public void Message_A_has_all_levels_of_its_parts_once() => Assert.Equal(38, Text.Read(DomainMessages.A).Levels.Length);

    [Fact]
    public void A_missing_dew_point_stays_missing() => Assert.Null(At(Text.Read(DomainMessages.A), 400).DewPoint);

    [Fact]
    public void Tropopause_and_strongest_wind_are_levels()
    {
        var sounding = Text.Read(DomainMessages.A);
        Assert.Equal(-71.3, At(sounding, 125).Temperature!.Value.Celsius, tolerance: 1e-9);
        Assert.Null(At(sounding, 182).Temperature);
        Assert.Equal(75, At(sounding, 182).Wind!.Value.Speed.Knots, tolerance: 1e-9);
    }

    /// <summary>PPBB of message A by the rule 9tuuu (thousands of feet); the wind at the ground has no height.</summary>
    [Fact]
    public void Fixed_height_winds_are_kept_apart_in_feet()
    {
        var winds = Text.Read(DomainMessages.A).WindsByHeight;
        double[] thousands = [1, 2, 3, 4, 6, 7, 8, 9, 11, 12, 14, 16, 20, 25, 30, 33, 35, 42, 45, 50, 54];
        Assert.Equal(thousands, winds.Select(wind => Math.Round(wind.Height.Feet / 1000, 9)));
        Assert.Equal((215, 44), (winds[3].Wind.FromDegrees, Math.Round(winds[3].Wind.Speed.Knots, 9)));
        Assert.Equal((250, 46), (winds[^1].Wind.FromDegrees, Math.Round(winds[^1].Wind.Speed.Knots, 9)));
    }

    [Fact]
    public void Time_is_day_and_hour_and_the_launch_time_without_a_month()
    {
        var source = Text.Read(DomainMessages.A).Source;
        Assert.Equal(new DayAndHour(22, 12), source.DayAndHour);
        Assert.Equal(new TimeOnly(11, 3), source.LaunchTime);
        Assert.Equal("72235", source.Station);
        Assert.Null(source.ValidAt);
    }

    /// <summary>Values that the tests of NOAA-EMC/GEODE assert for message B: 101,300 Pa and 281.75 K; 700 hPa 3,125 m and
    /// 277.15 K.</summary>
    [Fact]
    public void Message_B_agrees_with_a_public_decoder()
    {
        var sounding = Text.Read(DomainMessages.B);
        Assert.Equal(101_300, sounding.Surface.Pressure.Pascals, tolerance: 1e-6);
        Assert.Equal(281.75, sounding.Surface.Temperature!.Value.Kelvins, tolerance: 1e-9);
        Assert.Equal(3125, At(sounding, 700).Height!.Value.Metres);
        Assert.Equal(277.15, At(sounding, 700).Temperature!.Value.Kelvins, tolerance: 1e-9);
    }

    /// <summary>Day figures up to 31 mean metres per second [WMO306].</summary>
    [Fact]
    public void Speeds_are_metres_per_second_without_the_fifty() =>
        Assert.Equal(40, At(Text.Read(DomainMessages.A.Replace("TTAA 72121", "TTAA 22121", StringComparison.Ordinal)), 925).Wind!.Value.Speed.MetresPerSecond, tolerance: 1e-9);

    /// <summary>The elements by rule, with the edge cases that the US Navy's Aerographer's Mate handbook lists.</summary>
    [Theory]
    [InlineData("24442", 24.4, 20.2)]
    [InlineData("00156", -0.1, -6.1)]
    [InlineData("04182", -4.1, -36.1)]
    [InlineData("071//", -7.1, null)]
    [InlineData("07152", -7.1, null)]
    [InlineData("///50", null, null)]
    public void Temperature_groups_follow_the_code(string group, double? celsius, double? dewPoint)
    {
        Assert.Equal(celsius, TempElements.Temperature(new(group, 1)));
        Assert.Equal(dewPoint, TempElements.DewPoint(new(group, 1)));
    }

    [Theory]
    [InlineData("20540", 205, 40)]
    [InlineData("26573", 265, 73)]
    [InlineData("24622", 245, 122)]
    [InlineData("00000", 0, 0)]
    [InlineData("36007", 360, 7)]
    public void Wind_groups_follow_the_code(string group, double degrees, int speed) =>
        Assert.Equal((degrees, speed), TempElements.Wind(new(group, 1)));

    [Theory]
    [InlineData("37005")]
    [InlineData("/////")]
    public void Impossible_or_missing_winds_are_none(string group) => Assert.Null(TempElements.Wind(new(group, 1)));

    /// <summary>[WMO306] hhh; 00578 (−78 m) and 25985 (9,850 m) occur in real reports.</summary>
    [Theory]
    [InlineData("00", 578, -78)]
    [InlineData("70", 838, 2838)]
    [InlineData("25", 985, 9850)]
    [InlineData("20", 232, 12_320)]
    public void Heights_get_back_their_dropped_figures(string figures, int hhh, int metres) =>
        Assert.Equal(metres, StandardLevel.Lower.Single(level => level.Figures == figures).HeightM(hhh));

    private static SoundingLevel At(Sounding sounding, double hpa) =>
        sounding.Levels.Single(level => level.Pressure == Pressure.FromHectopascals(hpa));
}
