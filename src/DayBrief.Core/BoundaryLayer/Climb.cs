using DayBrief.Units;
using DayBrief.Updrafts;

namespace DayBrief.BoundaryLayer;

/// <summary>What a pilot who picks his thermals and centres them gets in a convective layer.</summary>
/// <param name="ClimbMs">Greatest climb over all heights, after the glider's own sink; null when nothing climbs.</param>
/// <param name="CoreMs">Air in the centre of a picked thermal at that height.</param>
/// <param name="BestHeightM">Height of the greatest climb.</param>
/// <param name="UsableTopM">Highest height at which the climb is still worth taking; null when it nowhere is.</param>
/// <remarks>No published factor from w* to climb was found. This one has three parts. Picking: core strengths of
/// thermals are taken as exponentially spread, so those at least as strong as the average are on average twice as strong
/// (<see cref="Picking"/>; an assumption). Shape: lift falls off as 1 − (r/R)², R twice the average thermal's radius and
/// at least 120 m, the order of the diameters in [FAA-13A]. Glider: a club glider of 0.62 m/s least sink at 77 km/h,
/// flown 5 % faster, at the best of five banks. Checked with the trade's rule that climb in knots is about the depth in
/// thousands of feet (common practice, no source), which it meets within a factor of two from 1000 to 3000 m.
/// Under cumulus, thermals do not end below the base: they feed it. Air goes through the base with w* [Neggers2006], so
/// the picked core falls in a straight line (an assumption) from the height of the greatest climb to w* at the base. A
/// base far above the layer's top is fed by few, and raises the usable top by less.</remarks>
public readonly record struct Climb(double? ClimbMs, double CoreMs, double BestHeightM, double? UsableTopM)
{
    /// <summary>Strength of the thermals that are taken over that of the average one.</summary>
    public const double Picking = 2;

    /// <summary>Radius of a picked thermal over the average one's.</summary>
    internal const double PickedWidth = 2;

    /// <summary>Least radius of a picked thermal, m.</summary>
    internal const double LeastRadiusM = 120;
    private const int Heights = 18;
    private static readonly double[] Shares = [.. Enumerable.Range(1, Heights).Select(i => i * 0.05)];
    private static readonly double[] CubeRoots = [.. Shares.Select(Math.Cbrt)];
    private static readonly (double RadiusM, double SinkMs)[] Circles =
        [.. new[] { 30.0, 35, 40, 45, 50 }.Select(CircleAt)];

    /// <summary>The best of a layer.</summary>
    /// <param name="depth">Depth of the layer.</param>
    /// <param name="velocityScale">w*.</param>
    /// <param name="usable">Climb worth taking.</param>
    /// <param name="cloudBase">Base of the cumulus, which ends all climbs; null under a blue sky.</param>
    public static Climb In(Height depth, Speed velocityScale, Speed usable, Height? cloudBase = null) => In(
        Guard.Finite(depth.Metres, min: 0, name: nameof(depth)),
        Guard.Finite(velocityScale.MetresPerSecond, min: 0, name: nameof(velocityScale)),
        usable.MetresPerSecond,
        cloudBase?.Metres ?? double.PositiveInfinity);

    /// <summary>Climb at one height; null where there is none.</summary>
    public static Speed? At(Height height, Height depth, Speed velocityScale)
    {
        var share = height.Metres / Guard.Finite(depth.Metres, min: 1, name: nameof(depth));
        if (share is <= 0 or >= AllenProfile.TopShare)
            return null;
        var climb = OfCore(Updraft.At(share, Math.Cbrt(share), depth.Metres, velocityScale.MetresPerSecond));
        return climb > 0 ? Speed.FromMetresPerSecond(climb) : null;
    }

    /// <param name="depthM">Depth, m.</param>
    /// <param name="wStar">w*, m/s.</param>
    /// <param name="usableMs">Climb worth taking, m/s.</param>
    /// <param name="cloudBaseM">Base of the cumulus, m; infinite under a blue sky.</param>
    /// <param name="fed">0 where thermals do not reach beyond the layer, 1 where they feed the cumulus.</param>
    internal static Climb In(double depthM, double wStar, double usableMs, double cloudBaseM, double fed = 1)
    {
        var (best, core, bestHeight, top) = (0.0, 0.0, 0.0, double.NaN);
        var (before, lastGood) = (0.0, -2);
        for (var i = 0; i < Heights; i++)
        {
            var height = Shares[i] * depthM;
            if (height > cloudBaseM)
            {
                top = lastGood == i - 1 ? cloudBaseM : top;
                break;
            }

            var updraft = Updraft.At(Shares[i], CubeRoots[i], depthM, wStar);
            var climb = OfCore(updraft);
            if (climb > best)
                (best, core, bestHeight) = (climb, Picking * updraft.CentreMs, height);
            if (climb >= usableMs && climb > 0)
                (top, lastGood) = (height, i);
            else if (lastGood == i - 1)
                top += (before - usableMs) / (before - climb) * Shares[0] * depthM;
            before = climb;
        }

        if (best >= usableMs && best > 0 && double.IsFinite(cloudBaseM) && cloudBaseM > bestHeight)
            top += fed * WithinReach(cloudBaseM / depthM) * Math.Max(0, UnderCumulus(core, bestHeight, wStar, usableMs, depthM, cloudBaseM) - top);
        return new(best > 0 ? best : null, core, bestHeight, double.IsNaN(top) ? null : top);
    }

    /// <summary>How far thermals of the layer reach a cloud base above its top: fully up to 1.2 depths, the upper edge of
    /// the zone that they overshoot into [Stull1988]; not where no cumulus forms any more.</summary>
    private static double WithinReach(double depths) => Math.Clamp((Cumulus.Reach - depths) / (Cumulus.Reach - 1.2), 0, 1);

    /// <summary>Highest height at which the core, falling from the best height to w* at the cloud base, still gives a climb worth taking.</summary>
    private static double UnderCumulus(double coreMs, double bestHeightM, double wStar, double usableMs, double depthM, double cloudBaseM)
    {
        var share = bestHeightM / depthM;
        var edge = Edge(Updraft.At(share, Math.Cbrt(share), depthM, wStar));
        var needed = double.PositiveInfinity;
        foreach (var (radius, sink) in Circles)
        {
            if (radius < edge)
                needed = Math.Min(needed, (usableMs + sink) / (1 - (radius * radius / (edge * edge))));
        }

        var reached = coreMs <= wStar ? 1 : Math.Clamp((coreMs - needed) / (coreMs - wStar), 0, 1);
        return bestHeightM + (reached * (cloudBaseM - bestHeightM));
    }

    private static double Edge(in Updraft updraft) => Math.Max(LeastRadiusM, PickedWidth * updraft.RadiusM);

    private static double OfCore(in Updraft updraft)
    {
        var edge = Edge(updraft);
        var best = double.NegativeInfinity;
        foreach (var (radius, sink) in Circles)
        {
            var lift = Picking * updraft.CentreMs * Math.Max(0, 1 - (radius * radius / (edge * edge)));
            best = Math.Max(best, lift - sink);
        }

        return best;
    }

    /// <summary>Radius and sink of a circle: r = V²/(g tan φ), sink with n^1.5, V = 1.05 · 21.4 m/s · √n.</summary>
    private static (double RadiusM, double SinkMs) CircleAt(double bankDegrees)
    {
        var bank = bankDegrees * Math.PI / 180;
        var load = 1 / Math.Cos(bank);
        var speed = 1.05 * 21.4 * Math.Sqrt(load);
        return (speed * speed / (Thermodynamics.Air.Gravity * Math.Tan(bank)), 0.62 * Math.Pow(load, 1.5));
    }
}
