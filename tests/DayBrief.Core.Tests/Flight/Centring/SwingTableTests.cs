using DayBrief.Flight.Instruments;

namespace DayBrief.Flight.Centring;

public sealed class SwingTableTests
{
    private static readonly Scene Today = new(Scene.Strong, 38);

    /// <summary>By symmetry a circle on the axis shows no swing, and its reading is its climb.</summary>
    [Fact]
    public void A_centred_circle_shows_no_swing()
    {
        var first = Today.Briefing.Swing.Rows[0];
        Assert.Equal(0, first.SwingMs, tolerance: 1e-9);
        Assert.Equal(first.MeanClimbMs, first.StrongestMs, tolerance: 0.001);
    }

    [Fact]
    public void The_swing_grows_with_the_distance_and_tells_it_back()
    {
        var swing = Today.Briefing.Swing;
        Assert.True(swing.Rows.Count > 3);
        Assert.All(swing.Rows, row => Assert.Equal(row.OffsetM, swing.OffsetM(row.SwingMs), tolerance: 1e-6));
        Assert.Equal(swing.Rows.Select(row => row.SwingMs).Order(), swing.Rows.Select(row => row.SwingMs));
    }

    /// <summary>A first-order lag takes the once-a-turn swing down by 1/√(1+(ωτ)²); near the core the swing is nearly once a turn;
    /// its harmonics, damped more, change it by up to 5 % either way.</summary>
    [Fact]
    public void Lag_shrinks_the_swing_by_the_instruments_gain()
    {
        var still = SwingTable.For(Scene.Strong, Today.Circle, new Variometer(0)).Rows[1];
        var lagging = SwingTable.For(Scene.Strong, Today.Circle, new Variometer(3)).Rows[1];
        var gain = new Variometer(3).Gain(Today.Circle.PeriodS);
        Assert.InRange(lagging.SwingMs / still.SwingMs, 0.95 * gain, 1.05 * gain);
    }

    /// <summary>Whatever the swing says there is a move for it: tighten near the core, take off bank farther out, straighten beyond.</summary>
    [Fact]
    public void Every_row_but_the_centred_one_has_a_move() =>
        Assert.All(Today.Briefing.Swing.Rows, row => Assert.True((row.TightenDeg ?? row.ShallowS ?? row.LevelS) is not null, $"{row}"));

    /// <summary>The move of a row is the kinematics of straightening: flown, it moves the centre by the row's distance (5 m for the roll's shape).</summary>
    [Fact]
    public void The_move_of_a_row_moves_the_centre_by_its_distance()
    {
        foreach (var row in Today.Briefing.Swing.Rows.Where(row => row.LevelS is not null))
            Assert.Equal(row.OffsetM, CentreShift.Straighten(Today.Circle, row.LevelS!.Value).Metres, tolerance: 5);
    }
}
