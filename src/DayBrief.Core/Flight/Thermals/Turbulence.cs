using DayBrief.Numerics;

namespace DayBrief.Flight.Thermals;

/// <summary>What is unsteady in and around the thermal: gusts, the core's wandering, its breathing. Seeded series, one value a second.</summary>
/// <remarks>
/// First-order autoregressions, sampled Ornstein–Uhlenbeck processes. All sizes go with the steady core, as turbulence of a
/// convective layer goes with w*. Set once on the given half of the flight recordings (docs/technique.md, "What was fitted"):
/// the size of the gusts by the amplitude of the climb round the circle, the wandering by the shift of the centre that never
/// settles, the breathing by the climb's spread from turn to turn.
/// A horizontal gust u changes the energy height by V·u/g: the instrument shows (V/g)·du/dt, which no compensation takes out; the
/// seat does not feel it.
/// </remarks>
internal static class Turbulence
{
    /// <summary>Vertical gusts, root mean square over core.</summary>
    internal const double ShareOfCore = 0.15;

    /// <summary>Memory of the vertical gusts, s: about 80 m of flight.</summary>
    internal const double MemoryS = 3;

    /// <summary>Horizontal gusts along the path, root mean square over core, and their memory.</summary>
    internal const double AlongOverCore = 0.25;
    internal const double AlongMemoryS = 8;

    /// <summary>Speed of the core's wandering, each way, over core, and its memory.</summary>
    internal const double WanderOverCore = 0.35;
    internal const double WanderMemoryS = 30;

    /// <summary>Breathing of the strength, root mean square, and its memory.</summary>
    internal const double Breathing = 0.12;
    internal const double BreathingMemoryS = 40;

    /// <summary>Spread of the strength from thermal to thermal (standard deviation of its logarithm).</summary>
    internal const double StrengthSpread = 0.35;

    /// <summary>Steps of the slow series, s; straight lines between.</summary>
    private const int SlowStep = 5;

    /// <summary>Fills one value a second of vertical gusts, m/s.</summary>
    public static void Gusts(Span<float> series, int stride, CounterRandom random, double coreMs)
    {
        var kept = Math.Exp(-1 / MemoryS);
        var fresh = Math.Sqrt(1 - (kept * kept));
        var value = random.Normal(0);
        for (var second = 0; second * stride < series.Length; second++)
        {
            series[second * stride] = (float)(ShareOfCore * coreMs * value);
            value = (kept * value) + (fresh * random.Normal(second + 1));
        }
    }

    /// <summary>Fills one value a second of what horizontal gusts along the path add to the climb by energy at a speed, m/s.</summary>
    public static void Along(Span<float> series, int stride, CounterRandom random, double coreMs, double speedMs)
    {
        var kept = Math.Exp(-1 / AlongMemoryS);
        var fresh = Math.Sqrt(1 - (kept * kept));
        var value = random.Normal(0);
        for (var second = 0; second * stride < series.Length; second++)
        {
            var next = (kept * value) + (fresh * random.Normal(second + 1));
            series[second * stride] = (float)(AlongOverCore * coreMs * speedMs / 9.80665 * (next - value));
            value = next;
        }
    }

    /// <summary>Fills one value a second of a slow series of the stated root mean square.</summary>
    public static void Slow(Span<float> series, int stride, CounterRandom random, double memoryS, double rootMeanSquare)
    {
        var kept = Math.Exp(-SlowStep / memoryS);
        var fresh = Math.Sqrt(1 - (kept * kept));
        var (from, to) = (random.Normal(0), 0.0);
        for (var second = 0; second * stride < series.Length; second++)
        {
            var part = second % SlowStep;
            if (part == 0)
                (from, to) = (second == 0 ? from : to, (kept * (second == 0 ? from : to)) + (fresh * random.Normal((second / SlowStep) + 1)));
            series[second * stride] = (float)(rootMeanSquare * (from + ((to - from) * part / SlowStep)));
        }
    }
}
