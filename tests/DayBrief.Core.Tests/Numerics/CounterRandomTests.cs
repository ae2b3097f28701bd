namespace DayBrief.Numerics;

public sealed class CounterRandomTests
{
    /// <summary>[Steele2014]'s generator with seed 1234567: first outputs as published by many independent ports.</summary>
    [Theory]
    [InlineData(0, 6457827717110365317)]
    [InlineData(1, 3203168211198807973)]
    [InlineData(2, 9817491932198370423)]
    [InlineData(3, 4593380528125082431)]
    [InlineData(4, 16408922859458223821)]
    public void Bits_match_the_published_outputs_of_SplitMix64(long index, ulong expected) =>
        Assert.Equal(expected, CounterRandom.FromSeed(1234567).Bits(index));

    /// <summary>Mean 0 and variance 1 by definition; 100 000 draws have standard errors 0.0032 and 0.0045, four of them allowed.</summary>
    [Fact]
    public void Normal_has_mean_zero_and_variance_one()
    {
        var draws = Enumerable.Range(0, 100_000).Select(index => CounterRandom.FromSeed(5).Normal(index)).ToArray();
        Assert.Equal(0, draws.Average(), tolerance: 4 * 0.0032);
        Assert.Equal(1, draws.Average(draw => draw * draw), tolerance: 4 * 0.0045);
    }

    /// <summary>Independent streams: the correlation of 10 000 pairs has the standard error 0.01, four of them allowed.</summary>
    [Fact]
    public void Streams_of_one_seed_are_uncorrelated()
    {
        var random = CounterRandom.FromSeed(9);
        var product = Enumerable.Range(0, 10_000).Average(index => random.Stream(1).Normal(index) * random.Stream(2).Normal(index));
        Assert.Equal(0, product, tolerance: 0.04);
    }
}
