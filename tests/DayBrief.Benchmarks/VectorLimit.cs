using System.Runtime.CompilerServices;
using System.Runtime.Intrinsics;
using BenchmarkDotNet.Attributes;

namespace DayBrief.Benchmarks;

/// <summary>What the vector unit can do at most: independent multiplications and additions in registers, per single-precision operation.</summary>
public class VectorLimit
{
    private const int Rounds = 10_000;
    private const int Chains = 8;

    [Benchmark(OperationsPerInvoke = Rounds * Chains * 2 * 16)]
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    public Vector512<float> MultiplyAndAdd512()
    {
        var (m, c) = (Vector512.Create(0.9999f), Vector512.Create(1e-4f));
        var (v0, v1, v2, v3, v4, v5, v6, v7) = (c, c, c, c, c, c, c, c);
        for (var round = 0; round < Rounds; round++)
        {
            (v0, v1, v2, v3) = ((v0 * m) + c, (v1 * m) + c, (v2 * m) + c, (v3 * m) + c);
            (v4, v5, v6, v7) = ((v4 * m) + c, (v5 * m) + c, (v6 * m) + c, (v7 * m) + c);
        }

        return v0 + v1 + v2 + v3 + v4 + v5 + v6 + v7;
    }

    [Benchmark(OperationsPerInvoke = Rounds * Chains * 2 * 8)]
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    public Vector256<float> MultiplyAndAdd256()
    {
        var (m, c) = (Vector256.Create(0.9999f), Vector256.Create(1e-4f));
        var (v0, v1, v2, v3, v4, v5, v6, v7) = (c, c, c, c, c, c, c, c);
        for (var round = 0; round < Rounds; round++)
        {
            (v0, v1, v2, v3) = ((v0 * m) + c, (v1 * m) + c, (v2 * m) + c, (v3 * m) + c);
            (v4, v5, v6, v7) = ((v4 * m) + c, (v5 * m) + c, (v6 * m) + c, (v7 * m) + c);
        }

        return v0 + v1 + v2 + v3 + v4 + v5 + v6 + v7;
    }

    /// <summary>The kernel divides three times and takes two roots a step.</summary>
    [Benchmark(OperationsPerInvoke = Rounds * Chains * 16)]
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    public Vector512<float> Divide512()
    {
        var m = Vector512.Create(1.0001f);
        var (v0, v1, v2, v3, v4, v5, v6, v7) = (m, m, m, m, m, m, m, m);
        for (var round = 0; round < Rounds; round++)
        {
            (v0, v1, v2, v3) = (m / v0, m / v1, m / v2, m / v3);
            (v4, v5, v6, v7) = (m / v4, m / v5, m / v6, m / v7);
        }

        return v0 + v1 + v2 + v3 + v4 + v5 + v6 + v7;
    }
}
