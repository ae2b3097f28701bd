namespace DayBrief.Numerics;

/// <summary>Random numbers by position: the same seed, stream and index always give the same number, in any order.</summary>
/// <remarks>
/// [Steele2014] SplitMix64: a counter stepped by the golden gamma and finished by a mixing function, so any number can be
/// had without those before it. That makes runs independent of the number of threads and lets every way of flying meet
/// the same encounters.
/// </remarks>
public readonly record struct CounterRandom
{
    private const ulong GoldenGamma = 0x9E3779B97F4A7C15;

    private readonly ulong _start;

    private CounterRandom(ulong start) => _start = start;

    /// <summary>The sequence of a seed.</summary>
    public static CounterRandom FromSeed(long seed) => new(unchecked((ulong)seed));

    /// <summary>An independent sequence of its own for a purpose or an encounter.</summary>
    public CounterRandom Stream(long number) => new(Mix(_start ^ Mix(unchecked((ulong)number + GoldenGamma))));

    /// <summary>64 random bits at an index from 0.</summary>
    public ulong Bits(long index) => Mix(unchecked(_start + (((ulong)index + 1) * GoldenGamma)));

    /// <summary>Uniform, from 0 up to but without 1.</summary>
    public double Uniform(long index) => (Bits(index) >> 11) * (1.0 / (1UL << 53));

    /// <summary>Normal with mean 0 and variance 1.</summary>
    /// <remarks>[BoxMuller1958], cosine branch; uses indices 2·index and 2·index+1.</remarks>
    public double Normal(long index) =>
        Math.Sqrt(-2 * Math.Log(1 - Uniform(2 * index))) * Math.Cos(2 * Math.PI * Uniform((2 * index) + 1));

    private static ulong Mix(ulong z) => unchecked(Finish((z ^ (z >> 30)) * 0xBF58476D1CE4E5B9));

    private static ulong Finish(ulong z) => unchecked(Last((z ^ (z >> 27)) * 0x94D049BB133111EB));

    private static ulong Last(ulong z) => z ^ (z >> 31);
}
