using DayBrief.Flight.Gliders;
using DayBrief.Service.Infrastructure;
using DayBrief.Texts;
using DayBrief.Units;

namespace DayBrief.Service.Features.Centring;

/// <summary>The circle that somebody asks for: refused where it lies too near the stall to be flown, with what would do.</summary>
internal static class CircleAsked
{
    private const double LeastBankDeg = 15;

    /// <exception cref="InvalidInputException">The speed keeps less than the margin over the stall in the turn.</exception>
    public static void Check(Glider glider, double bankDeg, Speed speed, double marginPct = CircleLimits.LeastMarginPct)
    {
        var circle = Circle.At(glider, bankDeg, speed);
        if (circle.StallMarginPct >= marginPct - 1e-9)
            return;
        var needed = Math.Ceiling(10 * CircleLimits.Slowest(glider, bankDeg, marginPct).Knots) / 10;
        var flattest = FlattestFor(glider, speed, marginPct);
        var stall = speed.Knots / (1 + (circle.StallMarginPct / 100));
        throw InvalidInputException.Field("--speed",
            flattest >= LeastBankDeg
                ? Words.Of($"At {bankDeg:0.#}° of bank this glider stalls at {stall:0.0} kt: {speed.Knots:0.#} kt keep {circle.StallMarginPct:0.#} % above that, and {marginPct:0} % are needed. Give {needed:0.0} kt or more, or at this speed {flattest:0}° of bank or less.")
                : Words.Of($"At {bankDeg:0.#}° of bank this glider stalls at {stall:0.0} kt: {speed.Knots:0.#} kt keep {circle.StallMarginPct:0.#} % above that, and {marginPct:0} % are needed. Give {needed:0.0} kt or more."));
    }

    /// <summary>The whole degrees of bank up to which a speed keeps the margin; 0 where it keeps it in no turn.</summary>
    private static double FlattestFor(Glider glider, Speed speed, double marginPct)
    {
        var ratio = speed.MetresPerSecond / ((1 + (marginPct / 100)) * glider.Stall.MetresPerSecond);
        return ratio <= 1 ? 0 : Math.Floor(Math.Acos(1 / (ratio * ratio)) * 180 / Math.PI);
    }
}
