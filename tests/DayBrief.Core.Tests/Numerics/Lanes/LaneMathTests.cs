namespace DayBrief.Numerics.Lanes;

public sealed class LaneMathTests
{
    /// <summary>Against the framework's double precision; tolerances are those the functions state.</summary>
    [Fact]
    public void Elementary_functions_are_as_accurate_as_stated()
    {
        for (var step = 0; step <= 1000; step++)
        {
            var positive = (float)Math.Exp((step - 500) * 0.05);
            var log = Math.Log2(positive);
            Assert.Equal(log, LaneMath.Log2(new Lane1(positive)).Value, tolerance: 4e-7 * Math.Max(1, Math.Abs(log)));
            var power = (step - 500) * 0.2f;
            Assert.Equal(1, LaneMath.Exp2(new Lane1(power)).Value / Math.Pow(2, power), tolerance: 3e-7);
            var angle = (step - 500) * 0.0024f;
            Assert.Equal(Math.Sin(angle), LaneMath.Sin(new Lane1(angle)).Value, tolerance: 2e-7);
            Assert.Equal(Math.Cos(1.3 * angle), LaneMath.Cos(new Lane1(1.3f * angle)).Value, tolerance: 1e-6);
        }
    }

    /// <summary>Every width must give the scalar's bits: each operation of the interface on awkward numbers.</summary>
    [Fact]
    public void Lanes_of_every_width_give_the_same_bits()
    {
        var left = Numbers(1);
        var right = Numbers(7);
        var scalar = All<Lane1>(left, right);
        Assert.Equal(scalar, All<Lane8>(left, right));
        Assert.Equal(scalar, All<Lane16>(left, right));
    }

    private static float[] Numbers(int offset) =>
        [.. Enumerable.Range(0, 32).Select(n => (float)((((n * 37) + offset) % 32 - 11.5) * Math.Pow(10, ((n + offset) % 5) - 2)))];

    private static int[] All<T>(float[] left, float[] right)
        where T : struct, ILane<T>
    {
        var results = new List<int[]>();
        foreach (var operation in Operations<T>())
        {
            var result = new float[left.Length];
            for (var first = 0; first < left.Length; first += T.Count)
                T.Store(operation(T.Load(left.AsSpan(first)), T.Load(right.AsSpan(first))), result.AsSpan(first));
            results.Add([.. result.Select(BitConverter.SingleToInt32Bits)]);
        }

        return [.. results.SelectMany(each => each)];
    }

    private static Func<T, T, T>[] Operations<T>()
        where T : struct, ILane<T> =>
    [
        (a, b) => a + b, (a, b) => a - b, (a, b) => a * b, (a, b) => a / b, (a, b) => a < b, (a, b) => a > b,
        (a, b) => (a < b) & T.Of(1), (a, b) => (a < b) | (a > b), (a, b) => T.Equal(a, a), T.Min, T.Max,
        (a, _) => T.Abs(a), (a, _) => T.Sqrt(T.Abs(a)), (a, _) => T.Floor(a), (a, b) => T.Select(a < b, a, b),
        (a, _) => T.Exponent(T.Abs(a)), (a, _) => T.Mantissa(T.Abs(a)), (a, _) => LaneMath.Log2(T.Abs(a)),
        (a, _) => LaneMath.Exp2(a), (a, _) => LaneMath.Sin(a), (a, _) => LaneMath.Cos(a),
    ];
}
