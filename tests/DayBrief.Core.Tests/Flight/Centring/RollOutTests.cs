using DayBrief.Flight.Gliders;
using DayBrief.Flight.Instruments;
using DayBrief.Units;

namespace DayBrief.Flight.Centring;

public sealed class RollOutTests
{
    /// <summary>Worked by hand for 35°, 90 km/h, 3.4 s from 45° to 45°: period 22.9 s, lag of 2 s 28.8°, delay 0.3 s 4.7°, half of
    /// a 1.32 s roll 10.4°; 90 − 43.9 = 46.1°.</summary>
    [Fact]
    public void The_closed_form_is_ninety_degrees_less_lag_delay_and_half_a_roll()
    {
        var circle = Circle.At(Scene.Standard, 35, Speed.FromKilometresPerHour(90));
        var rollOut = RollOut.ClosedForm(circle, Variometer.Usual, 100);
        Assert.Equal(46.1, rollOut.AfterWorstReadingDeg, tolerance: 0.1);
        Assert.Equal(46.1 / 360 * 22.9, rollOut.AfterWorstReadingS, tolerance: 0.02);
        Assert.Equal((100 / 25.0) - 1.322, rollOut.LevelS, tolerance: 0.001);
    }

    /// <summary>Common practice, no source: 45 to 90° after the worst point is felt, less with more lag; [FAA-13A] about 60°. Met
    /// with quick instruments; slower ones need less than 45° (docs/verification.md).</summary>
    [Theory]
    [InlineData(30)]
    [InlineData(35)]
    [InlineData(40)]
    public void With_a_quick_instrument_the_roll_out_is_where_practice_has_it(double bank)
    {
        var circle = CirclingOptimum.BestAt(Scene.Standard, Scene.Medium.At(Scene.Medium.Height).UpdraftMs, bank);
        Assert.InRange(RollOut.ClosedForm(circle, new(0), 50).AfterWorstReadingDeg, 45, 90);
        Assert.InRange(RollOut.ClosedForm(circle, Variometer.Quick, 50).AfterWorstReadingDeg, 45, 90);
    }

    [Fact]
    public void The_more_lag_the_earlier_the_roll_out()
    {
        var circle = Circle.At(Scene.Standard, 35, Speed.FromKilometresPerHour(90));
        var degrees = new[] { 0, 1, 2, 3, 5.0 }.Select(lag => RollOut.ClosedForm(circle, new(lag), 50).AfterWorstReadingDeg).ToArray();
        Assert.Equal(degrees.OrderDescending(), degrees);
    }
}
