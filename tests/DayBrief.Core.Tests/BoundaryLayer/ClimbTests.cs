using DayBrief.Units;

namespace DayBrief.BoundaryLayer;

public sealed class ClimbTests
{
    /// <summary>[Allen2006] §VI: w* 2.56 m/s, z_i 1401 m, 280 m up: printed radius 79.4 m and centre about 2.7 m/s; the
    /// printed code gives 79.375 m, mean 1.16769 and centre 2.73895 m/s. Tolerances: last printed digit.</summary>
    [Fact]
    public void The_average_thermal_matches_Allens_check_case()
    {
        var updraft = Updraft.At(Height.FromMetres(280), Height.FromMetres(1401), Speed.FromMetresPerSecond(2.56));
        Assert.Equal(79.375, updraft.RadiusM, tolerance: 0.0005);
        Assert.Equal(1.16769, updraft.MeanMs, tolerance: 0.000005);
        Assert.Equal(2.73895, updraft.CentreMs, tolerance: 0.000005);
    }

    /// <summary>Analysis of [Allen2006] eq. 11: the mean updraft is greatest, 0.4577 w*, at 0.227 z_i, and ends at 0.909 z_i.</summary>
    [Fact]
    public void The_mean_updraft_peaks_and_ends_where_calculus_says()
    {
        double Mean(double share) => Updraft.At(Height.FromMetres(1000 * share), Height.FromMetres(1000), Speed.FromMetresPerSecond(1)).MeanMs;
        Assert.Equal(0.4577, Mean(0.2273), tolerance: 0.0001);
        Assert.True(Mean(0.2273) > Mean(0.20) && Mean(0.2273) > Mean(0.25));
        Assert.Equal(0, Mean(0.92));
    }

    /// <summary>The trade's rule, climb in knots about the depth in thousands of feet (common practice, no source), for
    /// the depths and heat fluxes of the reference table of w*: within a factor of two.</summary>
    [Theory]
    [InlineData(1000, 1.41)]
    [InlineData(1500, 2.03)]
    [InlineData(2000, 2.40)]
    [InlineData(2500, 2.75)]
    [InlineData(3000, 3.22)]
    public void Climb_agrees_with_the_rule_of_the_trade_within_a_factor_of_two(double depthM, double wStar)
    {
        var ruleKnots = depthM / 304.8;
        var climb = Climb.In(Height.FromMetres(depthM), Speed.FromMetresPerSecond(wStar), Speed.FromMetresPerSecond(0.5));
        Assert.InRange(Speed.FromMetresPerSecond(climb.ClimbMs!.Value).Knots, ruleKnots / 2, ruleKnots * 2);
    }

    /// <summary>By definition: climb is less than the air's own speed, and no more comes out at the best height than at
    /// any other.</summary>
    [Fact]
    public void The_best_climb_is_below_the_core_and_above_all_others()
    {
        var (depth, scale) = (Height.FromMetres(1500), Speed.FromMetresPerSecond(2));
        var climb = Climb.In(depth, scale, Speed.FromMetresPerSecond(0.5));
        Assert.True(climb.ClimbMs < climb.CoreMs);
        for (var z = 75; z < 1400; z += 75)
            Assert.True((Climb.At(Height.FromMetres(z), depth, scale)?.MetresPerSecond ?? 0) <= climb.ClimbMs + 1e-9);
    }

    /// <summary>By definition: nothing is usable above the cloud base, and weak shallow layers carry no glider.</summary>
    [Fact]
    public void Cloud_base_caps_and_weak_layers_do_not_carry()
    {
        var capped = Climb.In(Height.FromMetres(2000), Speed.FromMetresPerSecond(2.5), Speed.FromMetresPerSecond(0.5), Height.FromMetres(900));
        Assert.True(capped.UsableTopM <= 900);
        Assert.Null(Climb.In(Height.FromMetres(200), Speed.FromMetresPerSecond(0.5), Speed.FromMetresPerSecond(0.5)).ClimbMs);
    }

    /// <summary>Under good cumulus gliders climb to the base (common practice, no source); [FAA-13A] has lift growing near it.
    /// w* is that of the reference table, 250 W/m² into 2000 m.</summary>
    [Theory]
    [InlineData(2000, 2.40, 2200)]
    [InlineData(2000, 2.40, 2350)]
    [InlineData(2000, 2.40, 1700)]
    public void Under_cumulus_that_the_layer_feeds_the_climb_ends_at_the_base(double depthM, double wStar, double baseM) =>
        Assert.Equal(baseM, Under(depthM, wStar, baseM), tolerance: 1e-6);

    /// <summary>Cloudy air goes through the base with w* [Neggers2006], which has to exceed sink in the circle (0.7 m/s and more) and
    /// the climb that is wanted (0.5): with 1.25 m/s the climb ends below the base, yet above that of a blue sky.</summary>
    [Fact]
    public void Weak_thermals_do_not_carry_to_the_base() =>
        Assert.InRange(Under(1000, 1.25, 1100), Under(1000, 1.25, null) + 1, 1099);

    /// <summary>Thermals overshoot the layer by about a fifth [Stull1988]: a cloud half as high again says nothing of them.</summary>
    [Fact]
    public void A_base_out_of_reach_raises_nothing()
    {
        Assert.Equal(Under(1290, 1.97, null), Under(1290, 1.97, 1.5 * 1290), tolerance: 1e-6);
        Assert.InRange(Under(1290, 1.97, 1.15 * 1290), Under(1290, 1.97, null) + 1, 1.15 * 1290);
    }

    private static double Under(double depthM, double wStar, double? baseM) =>
        Climb.In(
            Height.FromMetres(depthM),
            Speed.FromMetresPerSecond(wStar),
            Speed.FromMetresPerSecond(0.5),
            baseM is { } metres ? Height.FromMetres(metres) : null).UsableTopM!.Value;
}
