using DayBrief.Numerics;

namespace DayBrief.Flight.Gliders;

/// <summary>The bank and speed that climb best in one updraft with the circle on its axis, and how flat that optimum is.</summary>
/// <param name="Circle">The best circle.</param>
/// <param name="ClimbMs">Its climb, m/s; negative if no circle climbs.</param>
/// <param name="FlatFromDeg">Least bank whose best climb is within 0.1 m/s of it.</param>
/// <param name="FlatToDeg">Greatest bank whose best climb is within 0.1 m/s of it.</param>
public sealed record CirclingOptimum(Circle Circle, double ClimbMs, double FlatFromDeg, double FlatToDeg)
{
    /// <summary>The flattest circle of whole degrees that climbs within 0.1 m/s of the best, at its best speed.</summary>
    public required Circle FlatFrom { get; init; }

    /// <summary>The steepest of them.</summary>
    public required Circle FlatTo { get; init; }

    private const double LeastBank = 10;
    private const double GreatestBank = 60;
    private const double Flatness = 0.1;

    /// <summary>The optimum in an updraft given as vertical speed (m/s) against distance from the axis (m).</summary>
    /// <remarks>
    /// Textbook construction [Reichmann1978]: circling polar against the updraft's section, climb = w(r) − sink. Banks 10 to
    /// 60°, never beyond the limits; speed from the margin over the stall in the turn (never slower) to 1.5 times the speed of least sink in the turn.
    /// </remarks>
    /// <param name="glider">The glider.</param>
    /// <param name="updraftMs">The updraft.</param>
    /// <param name="limits">How steep at most; null for what is computed at all.</param>
    /// <param name="marginPct">Least margin over the stall in the turn, per cent.</param>
    public static CirclingOptimum Find(
        Glider glider, Func<double, double> updraftMs, CircleLimits? limits = null, double marginPct = CircleLimits.LeastMarginPct)
    {
        var greatest = Math.Min(GreatestBank, limits?.SteepestBankDeg ?? GreatestBank);
        ArgumentNullException.ThrowIfNull(glider);
        ArgumentNullException.ThrowIfNull(updraftMs);
        var bank = GoldenSection.Argmax(BestClimb, LeastBank, greatest, 0.02);
        var best = BestClimb(bank);
        var (from, to) = (Edge(-1), Edge(1));
        return new(BestAt(glider, updraftMs, bank, marginPct), best, from, to)
        {
            FlatFrom = BestAt(glider, updraftMs, Math.Ceiling(from), marginPct),
            FlatTo = BestAt(glider, updraftMs, Math.Max(LeastBank, Math.Floor(to)), marginPct),
        };

        double BestClimb(double degrees) => Climb(BestAt(glider, updraftMs, degrees, marginPct), updraftMs);

        double Edge(int side)
        {
            var edge = bank;
            while (edge + (0.5 * side) is var next && next >= LeastBank && next <= greatest && BestClimb(edge + (0.5 * side)) >= best - Flatness)
                edge += 0.5 * side;
            return edge;
        }
    }

    /// <summary>Climb of a circle on the axis of an updraft, m/s.</summary>
    internal static double Climb(Circle circle, Func<double, double> updraftMs) => updraftMs(circle.RadiusM) - circle.SinkMs;

    /// <summary>The best speed at one bank.</summary>
    internal static Circle BestAt(
        Glider glider, Func<double, double> updraftMs, double bankDeg, double marginPct = CircleLimits.LeastMarginPct)
    {
        var root = Math.Sqrt(1 / Math.Cos(bankDeg * Math.PI / 180));
        var slowest = CircleLimits.SlowestMs(glider, bankDeg, marginPct);
        var fastest = Math.Max(slowest, 1.5 * glider.Polar.MinimumSinkSpeedMs * root);
        var speed = GoldenSection.Argmax(v => Climb(Circle.At(glider, bankDeg, v), updraftMs), slowest, fastest, 0.02);
        return Circle.At(glider, bankDeg, speed);
    }
}
