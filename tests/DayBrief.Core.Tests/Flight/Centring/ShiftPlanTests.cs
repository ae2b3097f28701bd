using DayBrief.Flight.Gliders;
using DayBrief.Units;

namespace DayBrief.Flight.Centring;

public sealed class ShiftPlanTests
{
    /// <summary>What the closed form is for: rolled out where it says and level for as long as it says, the new circle lies on the
    /// core. The roll's shape leaves up to a tenth of the distance.</summary>
    [Theory]
    [InlineData(30, 48, 100)]
    [InlineData(40, 48, 80)]
    [InlineData(45, 52, 120)]
    public void Rolling_out_by_the_closed_form_brings_the_circle_onto_the_core(double bank, double knots, double offset)
    {
        var circle = Circle.At(Scene.Standard, bank, Speed.FromKnots(knots));
        foreach (var instrument in new[] { Instruments.Variometer.Quick, Instruments.Variometer.Slow })
        {
            var plan = ShiftPlan.For(circle, instrument, RollOut.ClosedForm(circle, instrument, offset), offset);
            Assert.Equal(0, Math.Sqrt(Math.Pow(plan.NewCentre.XM, 2) + Math.Pow(plan.NewCentre.YM, 2)), tolerance: 0.1 * offset);
        }
    }

    /// <summary>By geometry: the worst point is the farthest of the circle, the path begins at the roll-out point and ends on the new circle.</summary>
    [Fact]
    public void The_points_of_the_plan_lie_where_they_must()
    {
        var circle = Circle.At(Scene.Standard, 40, Speed.FromKnots(48));
        var plan = ShiftPlan.For(circle, Instruments.Variometer.Usual, RollOut.ClosedForm(circle, Instruments.Variometer.Usual, 90), 90);
        Assert.Equal(-90 - circle.RadiusM, plan.WorstPoint.XM, tolerance: 1e-9);
        Assert.Equal(plan.RollOutPoint, plan.Path[0]);
        Assert.Equal(circle.RadiusM, Distance(plan.Path[^1], plan.NewCentre), tolerance: 0.1);
        Assert.Equal(circle.RadiusM, Distance(plan.RollOutPoint, plan.OldCentre), tolerance: 1e-9);
    }

    private static double Distance(PlanPoint a, PlanPoint b) => Math.Sqrt(Math.Pow(a.XM - b.XM, 2) + Math.Pow(a.YM - b.YM, 2));
}
