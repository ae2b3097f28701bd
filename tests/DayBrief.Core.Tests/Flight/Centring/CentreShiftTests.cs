using DayBrief.Flight.Gliders;
using DayBrief.Units;

namespace DayBrief.Flight.Centring;

public sealed class CentreShiftTests
{
    private static readonly Circle Circle = Circle.At(Scene.Standard, 40, Speed.FromKnots(48));

    /// <summary>The flown path (integrated with rolls) against V·(level + one roll): the roll's bank follows a tangent, not a
    /// straight line, which shortens or lengthens the shift by up to a tenth of the roll's own 38 m.</summary>
    [Theory]
    [InlineData(0)]
    [InlineData(2)]
    [InlineData(5)]
    public void Straightening_moves_the_centre_by_speed_times_level_time_and_one_roll(double levelS) =>
        Assert.Equal(CentreShift.StraightenClosedForm(Circle, levelS), CentreShift.Straighten(Circle, levelS).Metres, tolerance: 4);

    /// <summary>The closed form's claim that the turn goes on by half of the roll-out's share before the straight stretch.</summary>
    [Fact]
    public void The_centre_moves_in_the_heading_of_the_middle_of_the_manoeuvre()
    {
        var halfRoll = 0.5 * Circle.RateDegS * Circle.RollS;
        Assert.Equal(halfRoll, CentreShift.Straighten(Circle, 3).Deg, tolerance: 3);
    }

    /// <summary>The flown path with rolls against the closed form, which takes each roll as half of its time: within 2 m.</summary>
    [Theory]
    [InlineData(15, 25)]
    [InlineData(15, 40)]
    [InlineData(20, 60)]
    public void Taking_off_bank_for_the_closed_forms_time_moves_the_centre_so_far(double byDeg, double metres)
    {
        var heldS = CentreShift.ShallowSFor(Circle, byDeg, metres)!.Value - (byDeg / Circle.Glider.RollRateDegS);
        Assert.Equal(metres, CentreShift.Shallow(Circle, byDeg, heldS).Metres, tolerance: 2);
    }

    /// <summary>The farthest a shallower circle reaches is half a turn of it: twice the difference of the radii.</summary>
    [Fact]
    public void No_time_moves_the_centre_farther_than_twice_the_difference_of_the_radii()
    {
        var most = 2 * (Circle.At(Scene.Standard, 25, Circle.Speed).RadiusM - Circle.RadiusM);
        Assert.NotNull(CentreShift.ShallowSFor(Circle, 15, 0.999 * most));
        Assert.Null(CentreShift.ShallowSFor(Circle, 15, 1.001 * most));
    }

    [Fact]
    public void Level_seconds_and_distance_invert_each_other()
    {
        Assert.Equal(3, CentreShift.LevelSFor(Circle, CentreShift.StraightenClosedForm(Circle, 3)), tolerance: 1e-9);
        Assert.Equal(0, CentreShift.LevelSFor(Circle, 5));
    }

    /// <summary>Worked by hand: easing over half a turn gives back 2/π of ΔR where it is centred a full turn later (hold 270°),
    /// and adds it half a turn later (hold 450°): 0.363 and 1.637 of ΔR.</summary>
    [Theory]
    [InlineData(270, 0.3634)]
    [InlineData(450, 1.6366)]
    public void Where_the_bank_is_eased_decides_how_far_tightening_moves_the_centre(double holdDeg, double share)
    {
        var tight = Circle.SpeedMs * Math.Sqrt(Math.Cos(40 * Math.PI / 180) / Math.Cos(50 * Math.PI / 180));
        var shrink = Circle.RadiusM - (tight * tight / (9.80665 * Math.Tan(50 * Math.PI / 180)));
        Assert.Equal(share * shrink, CentreShift.TightenClosedForm(Circle, 10, holdDeg), tolerance: 0.001 * shrink);
    }
}
