namespace DayBrief.Days;

/// <summary>The likely range of the usable top at every step of the day, from the ensemble.</summary>
internal static class UsableTopBand
{
    /// <summary>10, 50 and 90 % at each step, m above ground; 0 where that share has no usable thermal then.</summary>
    public static IEnumerable<DayRange<double>> Of(Ensemble ensemble, int steps)
    {
        var tops = new double[ensemble.Headlines.Length];
        for (var step = 0; step < steps; step++)
        {
            for (var i = 0; i < tops.Length; i++)
                tops[i] = ensemble.Headlines[i].UsableTopM[step] is var top && double.IsFinite(top) ? top : 0;
            Array.Sort(tops);
            yield return new(At(tops, 0.1), At(tops, 0.5), At(tops, 0.9));
        }
    }

    private static double At(double[] sorted, double share) => sorted[(int)Math.Round(share * (sorted.Length - 1))];
}
