namespace DayBrief.Days;

/// <summary>The course that a day is told by: the one assumed, as long as it lies in the middle of its ensemble.</summary>
/// <remarks>Where it does not (thermals just usable, cloud just forming), the figures would contradict their own ranges. Then the
/// course of the ensemble nearest its middle is told, with the maximum that was asked for.</remarks>
internal static class Middle
{
    private const double Low = 0.25;
    private const double High = 0.75;
    private const int Tries = 6;

    public static (DayTrack Track, Headline Headline) Of(
        DayFrame frame, Ensemble ensemble, DayTrack assumed, Headline headline, double wholeInflow)
    {
        if (Fits(ensemble, headline))
            return (assumed, headline);
        foreach (var i in Nearest(ensemble).Take(Tries))
        {
            var member = ensemble.Members[i] with { MaxTemperatureK = 0 };
            var track = HeatScale.Course(frame, member, DayRun.FineParts, assumed.HeatFactor, wholeInflow);
            var told = Headline.Of(track, frame.Site);
            if (Fits(ensemble, told))
                return (track, told);
        }

        return (assumed, headline);
    }

    /// <summary>Usable or not as the middle of the ensemble, and within its middle half in depth, top and climb.</summary>
    public static bool Fits(Ensemble ensemble, Headline headline) =>
        Within(ensemble, headline, told => told.MaxClimbMs)
        && Within(ensemble, headline, told => told.MaxUsableTopM)
        && Within(ensemble, headline, told => told.MaxDepthM);

    private static bool Within(Ensemble ensemble, Headline headline, Func<Headline, double> figure)
    {
        var sorted = ensemble.Sorted(figure, double.NegativeInfinity);
        double At(double share) => sorted[(int)Math.Round(share * (sorted.Length - 1))];
        var value = figure(headline) is var known && double.IsNaN(known) ? double.NegativeInfinity : known;
        return value >= At(Low) && value <= At(High) && double.IsFinite(value) == double.IsFinite(At(0.5));
    }

    private static IEnumerable<int> Nearest(Ensemble ensemble)
    {
        double[] Ranks(Func<Headline, double> figure)
        {
            var sorted = ensemble.Sorted(figure, double.NegativeInfinity);
            return [.. ensemble.Headlines.Select(told =>
                Array.BinarySearch(sorted, figure(told) is var value && double.IsNaN(value) ? double.NegativeInfinity : value) / (double)sorted.Length)];
        }

        var (climb, depth, top) = (Ranks(told => told.MaxClimbMs), Ranks(told => told.MaxDepthM), Ranks(told => told.MaxUsableTopM));
        return Enumerable.Range(0, ensemble.Members.Length).OrderBy(i =>
            Math.Abs(climb[i] - 0.5) + Math.Abs(depth[i] - 0.5) + Math.Abs(top[i] - 0.5) + (0.2 * Math.Abs(ensemble.Members[i].MaxTemperatureK)));
    }
}
