using DayBrief.Units;

namespace DayBrief.Service.Charts;

/// <summary>[NWSBarbs] table of barbs by speed, to the nearest 5 kt.</summary>
public sealed class WindBarbTests
{
    [Theory]
    [InlineData(2, 0, 0, 0)]
    [InlineData(3, 0, 0, 1)]
    [InlineData(7, 0, 0, 1)]
    [InlineData(8, 0, 1, 0)]
    [InlineData(12, 0, 1, 0)]
    [InlineData(17, 0, 1, 1)]
    [InlineData(32, 0, 3, 0)]
    [InlineData(37, 0, 3, 1)]
    [InlineData(48, 1, 0, 0)]
    [InlineData(52, 1, 0, 0)]
    [InlineData(67, 1, 1, 1)]
    [InlineData(102, 2, 0, 0)]
    public void Feathers_match_the_published_ranges(double knots, int pennants, int full, int half) =>
        Assert.Equal((pennants, full, half), WindBarb.Feathers(knots));

    [Fact]
    public void The_shaft_points_to_where_the_wind_comes_from()
    {
        var shaft = Marks(270, 15)[0];
        Assert.Equal(new(50, 50), shaft.Points[0]);
        Assert.Equal(30, shaft.Points[1].X, tolerance: 1e-9);  // west is left
        Assert.Equal(50, shaft.Points[1].Y, tolerance: 1e-9);
    }

    /// <summary>Feathers towards low pressure: of a west wind in the northern hemisphere to the north, that is up.</summary>
    [Theory]
    [InlineData(false, -1)]
    [InlineData(true, 1)]
    public void Feathers_stand_on_the_side_of_low_pressure(bool southern, int side) =>
        Assert.All(
            Marks(270, 65, southern).Skip(1),
            mark => Assert.Equal(side, Math.Sign(mark.Points[1].Y - 50)));

    [Fact]
    public void A_lone_half_feather_stands_in_from_the_end() =>
        Assert.True(Marks(270, 5)[1].Points[0].X > 30.5);

    [Fact]
    public void Calm_is_a_circle()
    {
        var drawing = new Drawing(100, 100, "", "");
        WindBarb.Draw(drawing, new(50, 50), Wind.From(0, Speed.FromKnots(1)), 20);
        Assert.IsType<CircleMark>(Assert.Single(drawing.Marks));
    }

    private static PathMark[] Marks(double from, double knots, bool southern = false)
    {
        var drawing = new Drawing(100, 100, "", "");
        WindBarb.Draw(drawing, new(50, 50), Wind.From(from, Speed.FromKnots(knots)), 20, southern);
        return [.. drawing.Marks.Cast<PathMark>()];
    }
}
