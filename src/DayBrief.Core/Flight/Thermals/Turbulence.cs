using DayBrief.Numerics;

namespace DayBrief.Flight.Thermals;

/// <summary>Gusts in and around the thermal: a seeded series of vertical speeds, one value a second.</summary>
/// <remarks>
/// No source for the size: root mean square 15 % of the core updraft and a memory of 2 s (about 50 m of flight) are assumed.
/// First-order autoregression, so the series is the sampled Ornstein–Uhlenbeck process; between seconds it is linear.
/// </remarks>
internal static class Turbulence
{
    internal const double ShareOfCore = 0.15;
    internal const double MemoryS = 2;

    /// <summary>Fills one value a second, every value with the stated root mean square.</summary>
    public static void Fill(Span<float> series, int stride, CounterRandom random, double rootMeanSquareMs)
    {
        var kept = Math.Exp(-1 / MemoryS);
        var fresh = Math.Sqrt(1 - (kept * kept));
        var value = random.Normal(0);
        for (var second = 0; second * stride < series.Length; second++)
        {
            series[second * stride] = (float)(rootMeanSquareMs * value);
            value = (kept * value) + (fresh * random.Normal(second + 1));
        }
    }
}
