namespace DayBrief.Numerics;

/// <summary>Random numbers without state: the same seed, member and variable give the same number, in any order and on
/// any thread.</summary>
internal static class CounterRandom
{
    /// <summary>Uniform in (0, 1).</summary>
    /// <remarks>SplitMix64 finaliser [Steele2014] over the three counters.</remarks>
    public static double Uniform(int seed, int member, int variable)
    {
        var x = Mix((ulong)(uint)seed + 0x9E3779B97F4A7C15UL);
        x = Mix(x ^ ((ulong)(uint)member * 0xD1B54A32D192ED03UL));
        x = Mix(x ^ ((ulong)(uint)variable * 0x8CB92BA72F3D8DD7UL));
        return ((x >> 11) + 0.5) / (1UL << 53);
    }

    /// <summary>Standard normal.</summary>
    /// <remarks>Box–Muller [BoxMuller1958] from two uniform numbers of the same counters.</remarks>
    public static double Normal(int seed, int member, int variable)
    {
        var radius = Math.Sqrt(-2 * Math.Log(Uniform(seed, member, 2 * variable)));
        return radius * Math.Cos(2 * Math.PI * Uniform(seed, member, (2 * variable) + 1));
    }

    private static ulong Mix(ulong x)
    {
        x = (x ^ (x >> 30)) * 0xBF58476D1CE4E5B9UL;
        x = (x ^ (x >> 27)) * 0x94D049BB133111EBUL;
        return x ^ (x >> 31);
    }
}
