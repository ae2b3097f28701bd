namespace DayBrief.Numerics;

/// <summary>The largest value of a function of one variable.</summary>
/// <remarks>Own code rather than the library's minimiser, which refuses a top that lies on a bound; ours often does.</remarks>
public static class GoldenSection
{
    private const int Cells = 16;
    private static readonly double Ratio = (Math.Sqrt(5) - 1) / 2;

    /// <summary>Where a function is largest between two bounds, to the given tolerance of x.</summary>
    /// <remarks>A scan of 16 cells picks the hill, because an updraft with a ring has more than one; then golden sections.</remarks>
    /// <exception cref="ArgumentOutOfRangeException">Bounds not in order, or tolerance not above 0.</exception>
    public static double Argmax(Func<double, double> function, double from, double to, double tolerance)
    {
        ArgumentNullException.ThrowIfNull(function);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(from, to);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(tolerance);
        var values = Enumerable.Range(0, Cells + 1).Select(cell => function(At(cell))).ToArray();
        var best = Array.IndexOf(values, values.Max());
        var found = Narrow(function, At(Math.Max(0, best - 1)), At(Math.Min(Cells, best + 1)), tolerance);
        return function(found) > values[best] ? found : At(best);

        double At(int cell) => from + ((to - from) * cell / Cells);
    }

    private static double Narrow(Func<double, double> function, double from, double to, double tolerance)
    {
        var (left, right) = (to - (Ratio * (to - from)), from + (Ratio * (to - from)));
        var (atLeft, atRight) = (function(left), function(right));
        while (to - from > tolerance)
        {
            if (atLeft > atRight)
            {
                (to, right, atRight) = (right, left, atLeft);
                left = to - (Ratio * (to - from));
                atLeft = function(left);
            }
            else
            {
                (from, left, atLeft) = (left, right, atRight);
                right = from + (Ratio * (to - from));
                atRight = function(right);
            }
        }

        return 0.5 * (from + to);
    }
}
