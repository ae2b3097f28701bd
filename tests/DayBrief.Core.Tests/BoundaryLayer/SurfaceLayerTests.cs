namespace DayBrief.BoundaryLayer;

public sealed class SurfaceLayerTests
{
    /// <summary>Wangara Day 33 at 12 and 14 LST: screen 284.12 and 285.36 K (Clarke et al. 1971) over a stirred layer of
    /// 283.16 and 284.75 K in the simulation of Nakanishi and Niino (2009), heated by 0.207 K m/s; u* was 0.17 to 0.19 m/s.
    /// The excess of 0.6 to 1.0 K must come out within a factor of two, for the wind of 3 m/s and short grass.</summary>
    [Fact]
    public void The_screen_is_as_much_warmer_than_the_stirred_layer_as_at_Wangara()
    {
        var noon = SurfaceLayer.Of(0.207, 0.211, 283, 1000, 3, 0.01);
        Assert.InRange(noon.ScreenExcessKelvins, 0.5, 2.0);
        Assert.InRange(noon.FrictionVelocityMs, 0.12, 0.35);
    }

    /// <summary>Monin–Obukhov: L = −u*³θ/(κ g F) by definition (κ 0.4), so it is longer in more wind; and more heat makes
    /// more excess.</summary>
    [Fact]
    public void Obukhov_length_follows_its_definition_and_heat_makes_the_excess()
    {
        var calm = SurfaceLayer.Of(0.1, 0.11, 290, 1000, 2, 0.03);
        var blown = SurfaceLayer.Of(0.1, 0.11, 290, 1000, 12, 0.03);
        var hot = SurfaceLayer.Of(0.2, 0.22, 290, 1000, 2, 0.03);
        Assert.True(blown.ObukhovLengthM < calm.ObukhovLengthM && calm.ObukhovLengthM < 0);
        Assert.True(hot.ScreenExcessKelvins > calm.ScreenExcessKelvins);
        var length = -Math.Pow(blown.FrictionVelocityMs, 3) * 290 / (0.4 * 9.80665 * 0.11);
        // The last iteration still moves u* a little.
        Assert.Equal(length, blown.ObukhovLengthM, tolerance: 0.05 * -length);
    }

    /// <summary>By definition: no excess over ground that does not heat the air.</summary>
    [Fact]
    public void No_heat_no_excess() =>
        Assert.Equal(0, SurfaceLayer.Of(-0.01, -0.01, 290, 500, 4, 0.03).ScreenExcessKelvins);
}
