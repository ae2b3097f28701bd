namespace DayBrief.Units;

public sealed class PositionTests
{
    /// <summary>One degree along a great circle of the mean earth radius is 111.195 km [IUGG].</summary>
    [Fact]
    public void A_degree_of_latitude_is_111_km() =>
        Assert.Equal(111.195, Position.FromDegrees(50, 10).KilometresTo(Position.FromDegrees(51, 10)), tolerance: 0.001);

    [Fact]
    public void The_way_over_the_date_line_is_the_short_one() =>
        Assert.Equal(222.39, Position.FromDegrees(0, 179).KilometresTo(Position.FromDegrees(0, -179)), tolerance: 0.01);

    [Theory]
    [InlineData(91, 0)]
    [InlineData(0, 181)]
    [InlineData(double.NaN, 0)]
    public void A_place_off_the_globe_is_refused(double latitude, double longitude) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => Position.FromDegrees(latitude, longitude));
}
