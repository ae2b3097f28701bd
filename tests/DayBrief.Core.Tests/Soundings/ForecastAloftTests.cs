namespace DayBrief.Soundings;

public sealed class ForecastAloftTests
{
    /// <summary>A later profile that is 2 K warmer all through, its own stirred layer none (an inversion at its ground): by
    /// construction the morning stays at the ground and is 2 K warmer from 500 m up.</summary>
    [Fact]
    public void The_morning_stays_below_and_the_later_air_stands_aloft()
    {
        var morning = SurfaceCorrectionTests.Ascent();
        var composed = ForecastAloft.Compose(morning, SurfaceCorrectionTests.Ascent(shiftK: 2));
        var changes = composed.Levels.Zip(morning.Levels, (after, before) => (after.Temperature!.Value - before.Temperature!.Value).Kelvins).ToArray();
        Assert.Equal(0, changes[0], tolerance: 0.2);
        Assert.InRange(changes[1], 0, 1);
        Assert.Equal(2, changes[^1], tolerance: 1e-9);
        Assert.Equal(2, changes[^2], tolerance: 1e-9);
        Assert.Contains(composed.Remarks, remark => remark.Code == "forecast-aloft");
    }
}
