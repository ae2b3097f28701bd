using DayBrief.House;

namespace DayBrief.BoundaryLayer;

/// <summary>The mixed layer against other models' published runs (shared reference data).</summary>
public sealed class PublishedGrowthTests
{
    /// <summary>[Vila2015] CLASS, default set-up and three variants, every half hour from 1 h on. Depth and w* 3 %, θ
    /// 0.2 K, q 0.2 g/kg as the issue asks: the same equations with other time stepping.
    /// There θ is referred to the surface. LCL 3 %: another saturation formula, and there the pressure falls linearly.</summary>
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
                Assert.Equal(lcl, CondensationLevel.M(layer.State.Theta, layer.State.Q, 1013), tolerance: 0.03 * lcl);
                checkedRows++;
            }

            for (var i = 0; i < 60; i++)
                layer.Advance(30, new(0.1, waterFlux));
        }

        Assert.True(checkedRows >= 20);
    }
}
