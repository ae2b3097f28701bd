using DayBrief.Numerics;

namespace DayBrief.Flight.Gliders;

/// <summary>The bank and speed that climb best in one updraft with the circle on its axis, and how flat that optimum is.</summary>
/// <param name="Circle">The best circle.</param>
/// <param name="ClimbMs">Its climb, m/s; negative if no circle climbs.</param>
/// <param name="FlatFromDeg">Least bank whose best climb is within 0.1 m/s of it.</param>
/// <param name="FlatToDeg">Greatest bank whose best climb is within 0.1 m/s of it.</param>
public sealed record CirclingOptimum(Circle Circle, double ClimbMs, double FlatFromDeg, double FlatToDeg)
{
    private const double LeastBank = 10;
    private const double GreatestBank = 60;
    private const double Flatness = 0.1;

    /// <summary>The optimum in an updraft given as vertical speed (m/s) against distance from the axis (m).</summary>
    /// <remarks>
    /// Textbook construction [Reichmann1978]: circling polar against the updraft's section, climb = w(r) − sink. Banks 10 to
    /// 60°; speed from 1.15 times the stall in the turn (never slower) to 1.5 times the speed of least sink in the turn.
    /// </remarks>
    public static CirclingOptimum Find(Glider glider, Func<double, double> updraftMs)
    {
        ArgumentNullException.ThrowIfNull(glider);
        ArgumentNullException.ThrowIfNull(updraftMs);
        var bank = GoldenSection.Argmax(BestClimb, LeastBank, GreatestBank, 0.02);
        var best = BestClimb(bank);
        return new(BestAt(glider, updraftMs, bank), best, Edge(-1), Edge(1));

        double BestClimb(double degrees) => Climb(BestAt(glider, updraftMs, degrees), updraftMs);

        double Edge(int side)
        {
            var edge = bank;
            while (edge + (0.5 * side) is >= LeastBank and <= GreatestBank && BestClimb(edge + (0.5 * side)) >= best - Flatness)
                edge += 0.5 * side;
            return edge;
        }
    }

    /// <summary>Climb of a circle on the axis of an updraft, m/s.</summary>
    internal static double Climb(Circle circle, Func<double, double> updraftMs) => updraftMs(circle.RadiusM) - circle.SinkMs;

    /// <summary>The best speed at one bank.</summary>
    internal static Circle BestAt(Glider glider, Func<double, double> updraftMs, double bankDeg)
    {
        var root = Math.Sqrt(1 / Math.Cos(bankDeg * Math.PI / 180));
        var slowest = Glider.LeastSpeedOverStall * glider.Stall.MetresPerSecond * root;
        var fastest = Math.Max(slowest, 1.5 * glider.Polar.MinimumSinkSpeedMs * root);
        var speed = GoldenSection.Argmax(v => Climb(Circle.At(glider, bankDeg, v), updraftMs), slowest, fastest, 0.02);
        return Circle.At(glider, bankDeg, speed);
    }
}
