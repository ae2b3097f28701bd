namespace DayBrief.Units;

/// <summary>The one rule of rounding, by hand; 1 ft is 0.3048 m, 1 NM 1852 m, 1 kt one NM an hour, all exact [SI].</summary>
public sealed class RoundingTests
{
    private static readonly Rounding Metric = new(Metric: true);
    private static readonly Rounding Feet = new(Metric: false);

    [Theory]
    [InlineData(1000, 1000, 3300)]
    [InlineData(1024.9, 1000, 3400)]
    [InlineData(1025, 1050, 3400)]
    [InlineData(24, 0, 100)]
    [InlineData(-10, 0, 0)]
    public void Heights_go_to_50_m_and_100_ft(double metres, double metric, double feet) =>
        Assert.Equal((metric, feet), (Metric.Height(metres), Feet.Height(metres)));

    /// <summary>5,500 ft are 1676.4 m, kept as 1676: still 5,500 ft, but never 1,680 m.</summary>
    [Theory]
    [InlineData(1676, 1670, 5500)]
    [InlineData(1371, 1370, 4490)]
    [InlineData(1000, 1000, 3280)]
    public void A_ceiling_is_never_said_higher_than_it_is(double metres, double metric, double feet) =>
        Assert.Equal((metric, feet), (Metric.Ceiling(metres), Feet.Ceiling(metres)));

    [Theory]
    [InlineData(152.4, 160, 500)]
    [InlineData(150, 150, 500)]
    [InlineData(213, 220, 700)]
    public void A_least_height_is_never_said_lower_than_it_is(double metres, double metric, double feet) =>
        Assert.Equal((metric, feet), (Metric.Floor(metres), Feet.Floor(metres)));

    /// <summary>10 kt are 18.52 km/h, 8 kt 14.8 km/h, 20 kt 37.04 km/h.</summary>
    [Theory]
    [InlineData(10, 18, 10)]
    [InlineData(8, 14, 8)]
    [InlineData(20, 37, 20)]
    public void A_limit_of_the_wind_is_never_said_higher_than_it_is(double knots, double metric, double said) =>
        Assert.Equal((metric, said), (Metric.SpeedLimit(Speed.FromKnots(knots).MetresPerSecond), Feet.SpeedLimit(Speed.FromKnots(knots).MetresPerSecond)));

    [Fact]
    public void Lengths_distances_and_speeds_have_one_step_each()
    {
        Assert.Equal((135.0, 440.0), (Metric.Length(134), Feet.Length(134)));
        Assert.Equal((4.5, 2.4), (Metric.Distance(4480), Feet.Distance(4480)));
        Assert.Equal((18.0, 10.0), (Metric.Speed(5), Feet.Speed(5)));
        Assert.Equal((1.6, 3.2), (Metric.Vertical(1.64), Feet.Vertical(1.64)));
        Assert.Equal((12.0, -3.0), (Rounding.Celsius(11.5), Rounding.Celsius(-2.6)));
    }

    [Fact]
    public void Nothing_is_minus_nought()
    {
        double[] noughts = [Metric.Vertical(-0.04), Feet.Vertical(-0.01), Metric.Height(-3), Rounding.Celsius(-0.4), Metric.Ceiling(-0.2), Rounding.To(-0.0, 1)];
        Assert.All(noughts, nought => Assert.Equal("0.0", nought.ToString("0.0", System.Globalization.CultureInfo.InvariantCulture)));
    }

    [Theory]
    [InlineData(0, 360)]
    [InlineData(2.4, 360)]
    [InlineData(358, 360)]
    [InlineData(2.6, 5)]
    [InlineData(182, 180)]
    public void Directions_go_to_five_degrees_and_north_is_360(double degrees, int said) =>
        Assert.Equal(said, Rounding.Direction(degrees));

    /// <summary>A tenth is no binary fraction: 0.15 / 0.1 is 1.4999… in doubles, and 3 × 0.1 is not 0.3.</summary>
    [Fact]
    public void Tenths_are_rounded_as_written()
    {
        Assert.Equal(0.2, Rounding.To(0.15, 0.1));
        Assert.Equal(0.3, Rounding.To(0.3000001, 0.1));
    }

    [Fact]
    public void A_figure_that_is_none_is_refused() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => Metric.Height(double.NaN));
}
