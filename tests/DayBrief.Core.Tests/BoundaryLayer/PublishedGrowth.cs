using DayBrief.House;

namespace DayBrief.BoundaryLayer;

/// <summary>Runs the mixed layer beside published runs of other models (shared reference data).</summary>
internal static class PublishedGrowth
{
    /// <summary>A variant of CLASS [Vila2015] and what it changes.</summary>
    public sealed record ClassVariant(string Name, double Q, double JumpQ, double Gamma, double Entrainment, double WaterFlux);

    /// <summary>One time of a CLASS run: theirs and ours.</summary>
    public sealed record ClassRow(double Hours, double[] Theirs, double[] Ours);

    /// <summary>One time of a large-eddy run: its two heights and ours between.</summary>
    public sealed record HeightRow(double Seconds, double LeastFluxM, double OursM, double GreatestGradientM);

    public static IReadOnlyList<ClassVariant> ClassVariants { get; } =
    [
        new("class_default", 0.008, -0.001, 0.006, 0.2, 1e-4),
        new("class_default_beta0.1", 0.008, -0.001, 0.006, 0.1, 1e-4),
        new("class_strong_gamma", 0.008, -0.001, 0.010, 0.2, 1e-4),
        new("class_dry_q", 0.004, -0.002, 0.006, 0.2, 2e-5),
    ];

    /// <summary>Depth (m), θ (K), q (g/kg), w* (m/s) and LCL (m) every half hour from 1 h on.</summary>
    public static IEnumerable<ClassRow> AgainstClass(ClassVariant variant)
    {
        var table = CaseTable.Read(Repository.Shared("cases", "class", variant.Name + ".csv"));
        var (q, above) = (variant.Q, variant.Q + variant.JumpQ);
        var column = new Column([0, 200, 200, 8000], [288, 288, 289, 289 + (variant.Gamma * 7800)], [q, q, above, above]);
        var layer = new MixedLayer(column, variant.Entrainment, 0, 200);
        for (var row = 0; row < table.Count; row++)
        {
            var seconds = table.Number(row, "t_s")!.Value;
            if (seconds >= 3600)
            {
                var flux = 0.1 + (0.61 * layer.State.Theta * variant.WaterFlux);
                yield return new(
                    seconds / 3600,
                    [Number("h_m"), Number("theta_K"), 1000 * Number("q_kgkg"), Number("wstar_ms"), Number("zlcl_m")],
                    [
                        layer.DepthM, layer.State.Theta, 1000 * layer.State.Q,
                        ConvectiveVelocity.Ms(flux, layer.DepthM, layer.State.ThetaV),
                        CondensationLevel.M(layer.State.Theta, layer.State.Q, 1013),
                    ]);
            }

            for (var i = 0; row + 1 < table.Count && i < (table.Number(row + 1, "t_s")!.Value - seconds) / 30; i++)
                layer.Advance(30, new(0.1, variant.WaterFlux));

            double Number(string name) => table.Number(row, name)!.Value;
        }
    }

    /// <summary>UCLALES, 4 K/km from the ground up, from 1 h on. Its flux follows from the encroachment depth it lists.</summary>
    public static IEnumerable<HeightRow> AgainstUclales()
    {
        var table = CaseTable.Read(Repository.Shared("cases", "drycbl", "uclales_linear_4Kkm.csv"));
        var encroached = table.Number(4, "z_enc_analytic_m")!.Value;
        var flux = encroached * encroached * 0.004 / (2 * table.Number(4, "t_s")!.Value);
        var layer = new MixedLayer(new([0, 10000], [300, 340], [0, 0]), 0.2, 0, 10);
        return Heights(table, layer, flux, "t_s", "zi_LES_min_flux_m", "zi_LES_max_dtheta_dz_m").Where(row => row.Seconds >= 3600);
    }

    /// <summary>DALES under a weak inversion; its hourly means at the middle of the hour. Its w* of 1.2 m/s at 880 m and
    /// 300 K is a flux of w*³θ/(g z) = 0.06 K m/s.</summary>
    public static IEnumerable<HeightRow> AgainstDales()
    {
        var table = CaseTable.Read(Repository.Shared("cases", "drycbl", "dales_cblweak.csv"));
        var start = CaseTable.Read(Repository.Shared("cases", "drycbl", "dales_cblweak_init.csv"));
        var theta = start.Column("theta_K");
        var layer = new MixedLayer(new(start.Column("z_m"), theta, new double[theta.Length]), 0.2, 0, 10);
        return Heights(table, layer, 0.06, "t_mid_s", "zi_min_flux_m", "zi_max_grad_m");
    }

    private static IEnumerable<HeightRow> Heights(
        CaseTable table, MixedLayer layer, double fluxKms, string time, string low, string high)
    {
        var now = 0.0;
        for (var row = 0; row < table.Count; row++)
        {
            for (; now < table.Number(row, time)!.Value; now += 30)
                layer.Advance(30, new(fluxKms, 0));
            yield return new(now, table.Number(row, low)!.Value, layer.DepthM, table.Number(row, high)!.Value);
        }
    }
}
