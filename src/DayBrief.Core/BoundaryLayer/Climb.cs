using DayBrief.Units;
using DayBrief.Updrafts;

namespace DayBrief.BoundaryLayer;

/// <summary>What a pilot who picks his thermals and centres them gets in a convective layer.</summary>
/// <param name="ClimbMs">Greatest climb over all heights, after the glider's own sink; null when nothing climbs.</param>
/// <param name="CoreMs">Air in the centre of a picked thermal at that height.</param>
/// <param name="BestHeightM">Height of the greatest climb.</param>
/// <param name="UsableTopM">Highest height at which the climb is still worth taking; null when it nowhere is.</param>
/// <remarks>The picked thermal of <see cref="PickedUpdraft"/>, and a club glider of 0.62 m/s least sink at 77 km/h, flown 5 % faster, at
/// the best of five banks. Checked with the trade's rule that climb in knots is about the depth in thousands of feet
/// (common practice, no source), which it meets within a factor of two from 1000 to 3000 m. Under cumulus, thermals do not end
/// below the base: they feed it.</remarks>
public readonly record struct Climb(double? ClimbMs, double CoreMs, double BestHeightM, double? UsableTopM)
{
    private const int Heights = 20;
    private static readonly double[] Shares = [.. Enumerable.Range(1, Heights).Select(i => i / (double)Heights)];
    private static readonly double[] BlueStrength = [.. Shares.Select(share => PickedUpdraft.Strength(share, 1, 1, 0))];
    private static readonly double[] BlueWidth = [.. Shares.Select(Width)];
    private static readonly (double RadiusM, double SinkMs)[] Circles =
        [.. new[] { 30.0, 35, 40, 45, 50 }.Select(CircleAt)];

    /// <summary>The best of a layer.</summary>
    /// <param name="depth">Depth of the layer.</param>
    /// <param name="velocityScale">w*.</param>
    /// <param name="usable">Climb worth taking.</param>
    /// <param name="cloudBase">Base of the cumulus, which ends all climbs where thermals reach it; null under a blue sky.</param>
    public static Climb In(Height depth, Speed velocityScale, Speed usable, Height? cloudBase = null) => In(
        Guard.Finite(depth.Metres, min: 0, name: nameof(depth)),
        Guard.Finite(velocityScale.MetresPerSecond, min: 0, name: nameof(velocityScale)),
        usable.MetresPerSecond,
        cloudBase?.Metres ?? double.PositiveInfinity,
        cloudBase is { } known ? Cumulus.Reached(known.Metres / depth.Metres) : 0);

    /// <summary>Climb at one height under a blue sky; null where there is none.</summary>
    public static Speed? At(Height height, Height depth, Speed velocityScale)
    {
        var picked = PickedUpdraft.At(velocityScale, depth, height);
        var climb = Of(picked.CoreMs, picked.RadiusM);
        return climb > 0 ? Speed.FromMetresPerSecond(climb) : null;
    }

    /// <param name="depthM">Depth, m.</param>
    /// <param name="wStar">w*, m/s.</param>
    /// <param name="usableMs">Climb worth taking, m/s.</param>
    /// <param name="cloudBaseM">Base of the cumulus, m; infinite under a blue sky.</param>
    /// <param name="fed">0 where thermals do not reach beyond the layer, 1 where they feed the cumulus.</param>
    internal static Climb In(double depthM, double wStar, double usableMs, double cloudBaseM, double fed = 1)
    {
        if (depthM < 1)
            return new(null, 0, 0, null);
        var share = double.IsFinite(cloudBaseM) ? fed : 0;
        var topM = share > 0 ? Math.Max(1, depthM + (share * (cloudBaseM - depthM))) : depthM;
        var (quoted, steady) = (PickedUpdraft.FullRadiusM(depthM), PickedUpdraft.CoreOverWStar * wStar);
        var (best, core, bestHeight, top) = (0.0, 0.0, 0.0, double.NaN);
        var (before, lastGood) = (0.0, -2);
        for (var i = 0; i < Heights; i++)
        {
            var height = Shares[i] * topM;
            var (strength, width) = share > 0
                ? (PickedUpdraft.Strength(height, depthM, topM, share * PickedUpdraft.CarriedThroughBase), Width(height / depthM))
                : (BlueStrength[i], BlueWidth[i]);
            var climb = Of(steady * strength, quoted * width);
            if (climb > best)
                (best, core, bestHeight) = (climb, steady * strength, height);
            if (climb >= usableMs && climb > 0)
                (top, lastGood) = (height, i);
            else if (lastGood == i - 1)
                top += (before - usableMs) / (before - climb) * Shares[0] * topM;
            before = climb;
        }

        return new(best > 0 ? best : null, core, bestHeight, double.IsNaN(top) ? null : top);
    }

    private static double Width(double share) => PickedUpdraft.AverageRadius(share) / PickedUpdraft.AverageRadius(PickedUpdraft.QuotedAt);

    private static double Of(double coreMs, double edgeM)
    {
        var best = double.NegativeInfinity;
        foreach (var (radius, sink) in Circles)
        {
            var lift = coreMs * Math.Max(0, 1 - (radius * radius / (edgeM * edgeM)));
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
