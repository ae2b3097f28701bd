using MathNet.Numerics.RootFinding;

namespace DayBrief.Numerics;

/// <summary>Where a continuous function of one variable crosses zero.</summary>
internal static class Root
{
    /// <summary>The zero between two points where the function has opposite signs (Brent's method).</summary>
    public static double Between(Func<double, double> function, double from, double to, double accuracy = 1e-10) =>
        Brent.FindRoot(function, Math.Min(from, to), Math.Max(from, to), accuracy, maxIterations: 200);
}
