namespace DayBrief.Flight.Thermals;

/// <summary>One row of Allen's shape constants: how the updraft falls off with distance for one ratio of core to radius.</summary>
/// <remarks>
/// [Allen2006] table 3 as the printed program uses it (its columns 1 to 4): the ratio of the updraft at r to the updraft in
/// the centre is 1/(1+|k₁·|r/r₂+k₃||^k₂) + k₄·r/r₂, never below zero.
/// </remarks>
internal readonly record struct AllenShape(double CoreRatio, double K1, double K2, double K3, double K4)
{
    private static readonly AllenShape[] Rows =
    [
        new(0.14, 1.5352, 2.5826, -0.0113, -0.1950),
        new(0.25, 1.5265, 3.6054, -0.0176, -0.1265),
        new(0.36, 1.4866, 4.8356, -0.0320, -0.0818),
        new(0.47, 1.2042, 7.7904, 0.0848, -0.0445),
        new(0.58, 0.8816, 13.9720, 0.3404, -0.0216),
        new(0.69, 0.7067, 23.9940, 0.5689, -0.0099),
        new(0.80, 0.6189, 42.7965, 0.7157, -0.0033),
    ];

    /// <summary>The row for a ratio of core radius to updraft radius: the first whose midpoint with the next lies above it.</summary>
    public static AllenShape For(double coreRatio)
    {
        for (var row = 0; row < Rows.Length - 1; row++)
        {
            if (coreRatio < 0.5 * (Rows[row].CoreRatio + Rows[row + 1].CoreRatio))
                return Rows[row];
        }

        return Rows[^1];
    }

    /// <summary>Between the rows: constants on straight lines over the ratio (the exponent on a geometric one), so that nothing jumps
    /// where the printed program changes rows; on a row the printed constants.</summary>
    public static AllenShape Between(double coreRatio)
    {
        if (coreRatio <= Rows[0].CoreRatio)
            return Rows[0];
        for (var row = 1; row < Rows.Length; row++)
        {
            if (coreRatio < Rows[row].CoreRatio)
                return Mix(Rows[row - 1], Rows[row], coreRatio);
        }

        return Rows[^1];
    }

    private static AllenShape Mix(AllenShape below, AllenShape above, double coreRatio)
    {
        var share = (coreRatio - below.CoreRatio) / (above.CoreRatio - below.CoreRatio);
        double Of(double from, double to) => from + (share * (to - from));
        return new(
            coreRatio,
            Of(below.K1, above.K1),
            below.K2 * Math.Pow(above.K2 / below.K2, share),
            Of(below.K3, above.K3),
            Of(below.K4, above.K4));
    }

    /// <summary>Updraft over centre updraft at a distance given in updraft radii.</summary>
    public double At(double radii) =>
        Math.Max(0, (1 / (1 + Math.Pow(Math.Abs(K1 * (radii + K3)), K2))) + (K4 * radii));
}
