using DayBrief.Numerics;

namespace DayBrief.Scores;

/// <summary>A figure as it was told: its middle and the range that holds eight cases of ten, and what a simple rival says.</summary>
/// <param name="Value">The figure.</param>
/// <param name="P10">Exceeded in nine cases of ten; null without a range.</param>
/// <param name="P90">Exceeded in one case of ten; null without a range.</param>
/// <param name="Parcel">The plain parcel method's figure; null where it has none.</param>
public readonly record struct Told(double Value, double? P10 = null, double? P90 = null, double? Parcel = null)
{
    /// <summary>Standard normal deviate of nine cases in ten.</summary>
    private const double NinetyPercent = 1.2815515594;

    private const int Cells = 1000;

    /// <summary>Whether the range holds what came true; null without a range.</summary>
    public bool? Holds(double truth) => P10 is { } low && P90 is { } high ? truth >= low && truth <= high : null;

    /// <summary>Continuous ranked probability score of the told figure, in its unit; of a figure without a range the absolute error.</summary>
    /// <remarks>[Hersbach2000] ∫(F(x) − 1{x ≥ truth})² dx, with F two half normals through the three quantiles that were told.</remarks>
    public double Crps(double truth)
    {
        var below = P10 is { } low ? Math.Max(0, (Value - low) / NinetyPercent) : 0;
        var above = P90 is { } high ? Math.Max(0, (high - Value) / NinetyPercent) : 0;
        if (below + above == 0)
            return Math.Abs(truth - Value);
        var from = Math.Min(truth, Value - (6 * below));
        var to = Math.Max(truth, Value + (6 * above));
        return Squared(from, truth, below, above, side: 0) + Squared(truth, to, below, above, side: 1);
    }

    /// <summary>∫(F − side)² over a stretch, by the rule of midpoints.</summary>
    private double Squared(double from, double to, double below, double above, int side)
    {
        var sum = 0.0;
        for (var i = 0; i < Cells; i++)
        {
            var x = from + ((i + 0.5) * (to - from) / Cells);
            var spread = x < Value ? below : above;
            var f = spread == 0 ? (x < Value ? 0 : 1) : NormalDistribution.Below((x - Value) / spread);
            sum += (f - side) * (f - side);
        }

        return sum * (to - from) / Cells;
    }
}
