namespace DayBrief.Days;

/// <summary>The likely range of a height at every step of the day, from the ensemble.</summary>
internal static class StepBand
{
    /// <summary>10, 50 and 90 % of the usable top at each step, m above ground; 0 where that share has no usable thermal then.</summary>
    public static IEnumerable<DayRange<double>> OfUsableTop(Ensemble ensemble, int steps) =>
        Of(ensemble.Headlines.Length, steps, (member, step) => ensemble.Headlines[member].UsableTopM[step]);

    /// <summary>The same of the layer's depth.</summary>
    public static IEnumerable<DayRange<double>> OfDepth(Ensemble ensemble, int steps) =>
        Of(ensemble.DepthM.Length, steps, (member, step) => ensemble.DepthM[member][step]);

    private static IEnumerable<DayRange<double>> Of(int members, int steps, Func<int, int, double> height)
    {
        var sorted = new double[members];
        for (var step = 0; step < steps; step++)
        {
            for (var i = 0; i < members; i++)
                sorted[i] = height(i, step) is var value && double.IsFinite(value) ? value : 0;
            Array.Sort(sorted);
            yield return new(At(sorted, 0.1), At(sorted, 0.5), At(sorted, 0.9));
        }
    }

    private static double At(double[] sorted, double share) => sorted[(int)Math.Round(share * (sorted.Length - 1))];
}
