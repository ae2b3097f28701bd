namespace DayBrief.Service.Charts;

public sealed class CirclePlanTests
{
    private static readonly Dictionary<string, CirclePlanInput> Plans = new()
    {
        ["usual"] = InventedThermals.Usual,
        ["broad"] = InventedThermals.Broad,
        ["small"] = InventedThermals.Small,
        ["right"] = InventedThermals.Usual with { TurnsRight = true },
    };

    public static TheoryData<string, double> Cases() =>
        new(from plan in Plans.Keys from width in new[] { 320.0, 360, 500 } select (plan, width));

    [Theory]
    [MemberData(nameof(Cases))]
    public void Every_label_can_be_read(string plan, double width) =>
        Legible.Check(CirclePlan.Draw(Plans[plan] with { Width = width }));

    /// <summary>Plane geometry: the weakest air is on the far side of the circle from the core, so the core lies across the
    /// centre and the tangent points to it a quarter of a turn later, in either direction of turn.</summary>
    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void A_quarter_turn_after_the_weakest_air_the_heading_is_for_the_core(bool right)
    {
        var geometry = new CirclePlanGeometry(InventedThermals.Usual with { TurnsRight = right });
        var weakest = geometry.OnCircle(0);
        Assert.Equal(55 + 68, Math.Sqrt((weakest.X * weakest.X) + (weakest.Y * weakest.Y)), tolerance: 1e-9);
        var heading = geometry.Heading(90);
        Assert.Equal(1, heading.X, tolerance: 1e-12);
        Assert.Equal(0, heading.Y, tolerance: 1e-12);
    }

    [Theory]
    [InlineData(false, -1)]
    [InlineData(true, 1)]
    public void A_left_turn_goes_anticlockwise_and_a_right_turn_clockwise(bool right, int side)
    {
        var geometry = new CirclePlanGeometry(InventedThermals.Usual with { TurnsRight = right });
        Assert.Equal(side, Math.Sign(geometry.OnCircle(30).Y));  // from the far left: anticlockwise is down
    }

    [Fact]
    public void Rolled_out_in_time_the_circle_moves_straight_onto_the_core_by_the_length_flown()
    {
        var geometry = new CirclePlanGeometry(InventedThermals.Usual);  // 24 + 52 + 14 = 90°, 55 m off, 55 m flown
        Assert.Equal(0, geometry.NewOffsetM, tolerance: 1e-9);
    }

    [Fact]
    public void Rolled_out_too_late_the_circle_passes_the_core()
    {
        var late = new CirclePlanGeometry(InventedThermals.Usual with { RollOutAfterDeg = 52 + 30 });
        Assert.Equal(2 * 55 * Math.Sin(15 * Math.PI / 180), late.NewOffsetM, tolerance: 1e-9);  // chord of 30° on 55 m
    }

    [Fact]
    public void It_is_to_scale_and_the_bar_says_so()
    {
        var plot = new CirclePlanPlot(InventedThermals.Usual);
        var bar = CirclePlan.Draw(InventedThermals.Usual).Marks.OfType<PathMark>().Last(mark => mark.Points.Count == 4);
        Assert.Equal(200 * 0.3048, (bar.Points[2].X - bar.Points[1].X) / plot.Scale, tolerance: 1e-6);  // it reads 200 ft
        var (across, up) = (plot.At(new(100, 0)).X - plot.At(new(0, 0)).X, plot.At(new(0, 0)).Y - plot.At(new(0, 100)).Y);
        Assert.Equal(across, up, tolerance: 1e-9);
    }
}
