using DayBrief.Units;

namespace DayBrief.Days;

/// <summary>Wind at the ground by the hour.</summary>
public sealed class SurfaceWindTests
{
    /// <summary>Physics: 3 m/s at the ground in the morning under 16 m/s aloft; momentum that is mixed down makes the afternoon's wind
    /// stronger than the morning's and weaker than that aloft, gusts stand above it, and its direction turns to that aloft.</summary>
    [Fact]
    public void The_growing_layer_brings_the_wind_down()
    {
        var day = Day(hpa => Wind.From(hpa > 960 ? 200 : 260, Speed.FromMetresPerSecond(hpa > 960 ? 3 : 16)));
        var (morning, noon) = (day.Steps.First(step => step.SurfaceWindKt is not null), Cases.At(day, 13));
        Assert.InRange(noon.SurfaceWindKt!.Value, morning.SurfaceWindKt!.Value + 4, Speed.FromMetresPerSecond(16).Knots);
        Assert.InRange(noon.GustKt!.Value, noon.SurfaceWindKt.Value + 3, 2.5 * noon.SurfaceWindKt.Value);
        Assert.InRange(noon.SurfaceWindFromDegrees!.Value, 240, 262);
        Assert.Equal(200, morning.SurfaceWindFromDegrees!.Value, tolerance: 1);
    }

    /// <summary>By definition: a maximum of wind at 400 m is told with the time at which the layer is that deep.</summary>
    [Fact]
    public void A_low_level_maximum_is_told_with_the_hour_when_it_reaches_the_field()
    {
        var day = Day(hpa => Wind.From(230, Speed.FromMetresPerSecond(hpa switch { > 990 => 3, > 960 => 6, > 900 => 17, > 800 => 9, _ => 8 })));
        var jet = day.Wind!.LowLevelMaximum!.Value;
        Assert.Equal(day.Steps.First(step => step.MixedLayerDepthM >= jet.Height.Metres).Time, jet.ReachesGround);
        Assert.Contains(day.Wind.Reasons, reason => reason.ToString().Contains("is mixed down to the field", StringComparison.Ordinal));
    }

    /// <summary>By definition: without winds in the ascent none is told.</summary>
    [Fact]
    public void Without_winds_there_is_none() => Assert.All(Day(null).Steps, step => Assert.Null(step.SurfaceWindKt));

    private static ConvectiveDay Day(Func<double, Wind?>? wind) => ConvectiveDay.Compute(
        ConvectiveDayTests.Morning(Cases.Utc("2026-06-21T03:00Z"), wind), ConvectiveDayTests.Site(), new(2026, 6, 21), new() { EnsembleSize = 0 });
}
