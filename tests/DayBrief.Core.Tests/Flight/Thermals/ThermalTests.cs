using DayBrief.Units;

namespace DayBrief.Flight.Thermals;

public sealed class ThermalTests
{
    private static readonly Thermal Today = Make(2.5, 120, 1500, 600, ThermalForm.Average);

    /// <summary>What the caller states is what the mapping must give back; only rounding remains.</summary>
    [Theory]
    [InlineData(2.5, 120, 1500, 600)]
    [InlineData(5, 300, 3000, 2300)]
    [InlineData(1, 40, 800, 790)]
    [InlineData(4, 700, 4000, 300)]
    public void A_thermal_has_the_stated_strength_and_radius_at_its_height(double core, double radius, double depth, double height)
    {
        var thermal = Make(core, radius, depth, height);
        var there = thermal.At(thermal.Height);
        Assert.Equal(core, there.CentreUpdraftMs, tolerance: 1e-9);
        Assert.Equal(radius, there.RadiusM, tolerance: 1e-9);
    }

    /// <summary>Independent of the mapping: with Allen's own radius the thermal is Allen's updraft of the check case
    /// ([Allen2006] section VI, w* 2.56 m/s).</summary>
    [Fact]
    public void The_check_case_comes_back_from_its_core_and_radius() =>
        Assert.Equal(2.56, Make(2.73895, 79.3752, 1401, 280, ThermalForm.Average).WStarMs, tolerance: 1e-5);

    /// <summary>Computed from v = −(r/2)·dw/dz with equation 11 of [Allen2006] for w* 2.5, depth 1500 m, r 80 m; two decimals
    /// (the last one is 0.06498, printed 0.07).</summary>
    [Theory]
    [InlineData(75, -0.13)]
    [InlineData(150, -0.06)]
    [InlineData(341, 0)]
    [InlineData(900, 0.05)]
    [InlineData(1200, 0.07)]
    public void Air_flows_in_low_down_and_out_near_the_top(double height, double expectedMs) =>
        Assert.Equal(expectedMs, RadialFlow.OutwardMs(2.5, 1500, height / 1500, 80, 80), tolerance: 0.0051);

    /// <summary>Continuity by finite differences: the flow through the rim replaces the growth of the mean flux at fixed radius.</summary>
    [Theory]
    [InlineData(200)]
    [InlineData(900)]
    public void Flow_through_the_rim_balances_the_change_of_the_vertical_flux(double height)
    {
        var area = Math.PI * 120 * 120;
        double Flux(double z) => area * AllenUpdraft.MeanUpdraft(Today.WStarMs, z / 1500);
        var outward = 2 * Math.PI * 120 * RadialFlow.OutwardMs(Today.WStarMs, 1500, height / 1500, 120, 120);
        Assert.Equal(0, outward + ((Flux(height + 1) - Flux(height - 1)) / 2), tolerance: 1e-3 * area / 1500);
    }

    /// <summary>Analytic: 5 m/s of wind for 1000 m at 2 m/s is 500 s, so 2500 m.</summary>
    [Fact]
    public void A_fixed_column_drifts_with_the_wind() =>
        Assert.Equal(2500, Lean.DriftM(Speed.FromMetresPerSecond(5), Height.FromMetres(1000), Speed.FromMetresPerSecond(2)));

    /// <summary>By construction: upright at half the depth, leaning down the shear above it and against it below.</summary>
    [Fact]
    public void A_sheared_thermal_leans_with_the_shear_above_half_its_depth()
    {
        var sheared = new Thermal(Speed.FromMetresPerSecond(2.5), 120, Height.FromMetres(1500), Height.FromMetres(600), null, 3);
        Assert.Equal(0, Lean.Slope(sheared, Height.FromMetres(750))!.Value, tolerance: 1e-12);
        Assert.True(Lean.Slope(sheared, Height.FromMetres(1000)) > 0);
        Assert.True(Lean.Slope(sheared, Height.FromMetres(400)) < 0);
        Assert.Null(Lean.Slope(sheared, Height.FromMetres(1500)));
    }

    /// <summary>The model's own statement: the foot passes later higher up, by the height over the speed of rise.</summary>
    [Fact]
    public void A_thermal_dies_from_below()
    {
        var short_ = new Thermal(Speed.FromMetresPerSecond(2.5), 120, Height.FromMetres(1500), Height.FromMetres(600), TimeSpan.FromMinutes(10));
        var late = TimeSpan.FromMinutes(9.5);
        var here = LifeCycle.Strength(short_, Height.FromMetres(600), late);
        Assert.True(LifeCycle.Strength(short_, Height.FromMetres(300), late) < here);
        Assert.True(LifeCycle.Strength(short_, Height.FromMetres(800), late) > here);
        Assert.Equal(0, LifeCycle.Strength(short_, Height.FromMetres(600), TimeSpan.FromMinutes(10)));
        Assert.Equal(1, LifeCycle.Strength(Today, Height.FromMetres(600), TimeSpan.FromHours(3)));
    }

    [Theory]
    [InlineData(double.NaN, 120, 1500, 600)]
    [InlineData(0, 120, 1500, 600)]
    [InlineData(2.5, -1, 1500, 600)]
    [InlineData(2.5, 120, 1500, 1600)]
    public void Impossible_numbers_are_refused(double core, double radius, double depth, double height) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => Make(core, radius, depth, height));

    private static Thermal Make(double core, double radius, double depth, double height, ThermalForm form = ThermalForm.Picked) =>
        new(Speed.FromMetresPerSecond(core), radius, Height.FromMetres(depth), Height.FromMetres(height), form: form);
}
