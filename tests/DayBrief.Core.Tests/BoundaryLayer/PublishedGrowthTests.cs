using DayBrief.House;

namespace DayBrief.BoundaryLayer;

/// <summary>The mixed layer against other models' published runs (shared reference data).</summary>
public sealed class PublishedGrowthTests
{
    /// <summary>[Vila2015] CLASS, default set-up and three variants, every half hour from 1 h on. Depth and w* 3 %, θ
    /// 0.2 K, q 0.2 g/kg as the issue asks: the same equations with other time stepping.
    /// There θ is referred to the surface. LCL 5 %: there
    /// e = q p/0.622 (1.4 % more vapour pressure at 8.7 g/kg) and the pressure falls linearly.</summary>
    [Theory]
    [InlineData("class_default", 0.008, -0.001, 0.006, 0.2, 1e-4)]
    [InlineData("class_default_beta0.1", 0.008, -0.001, 0.006, 0.1, 1e-4)]
    [InlineData("class_strong_gamma", 0.008, -0.001, 0.010, 0.2, 1e-4)]
    [InlineData("class_dry_q", 0.004, -0.002, 0.006, 0.2, 2e-5)]
    public void Growth_matches_CLASS(string name, double q, double jumpQ, double gamma, double entrainment, double waterFlux)
    {
        var table = CaseTable.Read(Repository.Shared("cases", "class", name + ".csv"));
        var layer = new MixedLayer(
            new([0, 200, 200, 8000], [288, 288, 289, 289 + (gamma * 7800)], [q, q, q + jumpQ, q + jumpQ]), entrainment, 0, 200);
        var checkedRows = 0;
        for (var row = 0; row < table.Count; row++)
        {
            var seconds = table.Number(row, "t_s")!.Value;
            if (seconds >= 3600 && seconds % 1800 == 0)
            {
                var depth = table.Number(row, "h_m")!.Value;
                var wStar = table.Number(row, "wstar_ms")!.Value;
                Assert.Equal(depth, layer.DepthM, tolerance: 0.03 * depth);
                Assert.Equal(table.Number(row, "theta_K")!.Value, layer.State.Theta, tolerance: 0.2);
                Assert.Equal(table.Number(row, "q_kgkg")!.Value, layer.State.Q, tolerance: 0.0002);
                var flux = 0.1 + (0.61 * layer.State.Theta * waterFlux);
                Assert.Equal(wStar, ConvectiveVelocity.Ms(flux, layer.DepthM, layer.State.ThetaV), tolerance: 0.03 * wStar);
                var lcl = table.Number(row, "zlcl_m")!.Value;
                Assert.Equal(lcl, CondensationLevel.M(layer.State.Theta, layer.State.Q, 1013), tolerance: 0.05 * lcl);
                checkedRows++;
            }

            for (var i = 0; i < 60; i++)
                layer.Advance(30, new(0.1, waterFlux));
        }

        Assert.True(checkedRows >= 20);
    }

    /// <summary>UCLALES, 4 K/km and 0.06 K m/s from the ground up, from 1 h on: between the heights of least flux and of
    /// greatest gradient, which differ by 5 to 16 %, widened by 5 % as the issue asks.</summary>
    [Fact]
    public void Growth_lies_between_the_two_heights_of_UCLALES()
    {
        var table = CaseTable.Read(Repository.Shared("cases", "drycbl", "uclales_linear_4Kkm.csv"));
        var analytic = table.Number(4, "z_enc_analytic_m")!.Value;
        var flux = analytic * analytic * 0.004 / (2 * table.Number(4, "t_s")!.Value);
        var layer = new MixedLayer(new([0, 10000], [300, 340], [0, 0]), 0.2, 0, 10);
        AssertBetween(table, layer, flux, "t_s", "zi_LES_min_flux_m", "zi_LES_max_dtheta_dz_m", firstSeconds: 3600);
    }

    /// <summary>DALES under a weak inversion: as above. Its hourly means are compared at the middle of the hour.</summary>
    [Fact]
    public void Growth_lies_between_the_two_heights_of_DALES()
    {
        var table = CaseTable.Read(Repository.Shared("cases", "drycbl", "dales_cblweak.csv"));
        var start = CaseTable.Read(Repository.Shared("cases", "drycbl", "dales_cblweak_init.csv"));
        var theta = start.Column("theta_K");
        var column = new Column(start.Column("z_m"), theta, new double[theta.Length]);
        // Its w* of 1.2 m/s at 880 m and 300 K is a flux of w*³ θ/(g z) = 0.0600 K m/s.
        var layer = new MixedLayer(column, 0.2, 0, 10);
        AssertBetween(table, layer, 0.06, "t_mid_s", "zi_min_flux_m", "zi_max_grad_m", firstSeconds: 0);
    }

    private static void AssertBetween(
        CaseTable table, MixedLayer layer, double fluxKms, string time, string low, string high, double firstSeconds)
    {
        var (now, compared) = (0.0, 0);
        for (var row = 0; row < table.Count; row++)
        {
            for (; now < table.Number(row, time)!.Value; now += 30)
                layer.Advance(30, new(fluxKms, 0));
            if (now < Math.Max(1, firstSeconds))
                continue;
            Assert.InRange(layer.DepthM, 0.95 * table.Number(row, low)!.Value, 1.05 * table.Number(row, high)!.Value);
            compared++;
        }

        Assert.True(compared >= 4);
    }
}
