using DayBrief.Units;

namespace DayBrief.Flight.Instruments;

public sealed class VariometerTests
{
    /// <summary>Analytic phase atan ωτ and amplitude 1/√(1+(ωτ)²), worked out by hand for a 20 s and a 16 s turn; last digits.</summary>
    [Theory]
    [InlineData(1, 20, 17.4, 0.954)]
    [InlineData(2, 20, 32.1, 0.847)]
    [InlineData(3, 20, 43.3, 0.728)]
    [InlineData(1, 16, 21.4, 0.931)]
    [InlineData(2, 16, 38.1, 0.786)]
    [InlineData(3, 16, 49.7, 0.647)]
    [InlineData(2, 30, 22.7, 0.922)]
    public void Phase_and_amplitude_are_those_of_a_first_order_lag(double lag, double period, double phaseDeg, double gain)
    {
        var instrument = new Variometer(lag);
        Assert.Equal(phaseDeg, instrument.LagDeg(period), tolerance: 0.06);
        Assert.Equal(gain, instrument.Gain(period), tolerance: 0.0006);
    }

    /// <summary>(V/g)·dV/dt for 30 m/s and −1 m/s² is 3.06 m/s (hand-worked): what an uncompensated instrument shows as climb.</summary>
    [Theory]
    [InlineData(0, 3.06)]
    [InlineData(0.5, 1.53)]
    [InlineData(1, 0)]
    public void Slowing_down_reads_as_climb_unless_compensated(double compensation, double expectedMs) =>
        Assert.Equal(expectedMs, new Variometer(2, compensation: compensation).SpeedChangeErrorMs(Speed.FromMetresPerSecond(30), -1), tolerance: 0.005);

    [Fact]
    public void Impossible_numbers_are_refused()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => new Variometer(-1));
        Assert.Throws<ArgumentOutOfRangeException>(() => new Variometer(2, compensation: 1.5));
        Assert.Throws<ArgumentOutOfRangeException>(() => Variometer.Usual.LagDeg(0));
    }
}
