namespace DayBrief.Numerics;

public sealed class CounterRandomTests
{
    /// <summary>Moments of the uniform and the normal distribution (1/2 and 1/12; 0 and 1) from 100,000 numbers; four
    /// standard errors.</summary>
    [Fact]
    public void Numbers_have_the_moments_of_their_distributions()
    {
        var uniform = Enumerable.Range(0, 100_000).Select(i => CounterRandom.Uniform(1, i, 0)).ToArray();
        var normal = Enumerable.Range(0, 100_000).Select(i => CounterRandom.Normal(1, i, 3)).ToArray();
        Assert.Equal(0.5, uniform.Average(), tolerance: 4 * Math.Sqrt(1 / 12.0 / 100_000));
        Assert.Equal(1 / 12.0, uniform.Average(x => (x - 0.5) * (x - 0.5)), tolerance: 4 * Math.Sqrt(1 / 180.0 / 100_000));
        Assert.Equal(0, normal.Average(), tolerance: 4 * Math.Sqrt(1 / 100_000.0));
        Assert.Equal(1, normal.Average(x => x * x), tolerance: 4 * Math.Sqrt(2 / 100_000.0));
    }

    /// <summary>By design: no state, so no order; and neighbouring variables and seeds are uncorrelated (four standard
    /// errors of a correlation of 0).</summary>
    [Fact]
    public void Variables_and_seeds_are_independent()
    {
        Assert.Equal(CounterRandom.Normal(5, 6, 7), CounterRandom.Normal(5, 6, 7));
        var variables = Enumerable.Range(0, 20_000).Average(i => CounterRandom.Normal(1, i, 0) * CounterRandom.Normal(1, i, 1));
        var seeds = Enumerable.Range(0, 20_000).Average(i => CounterRandom.Normal(1, i, 0) * CounterRandom.Normal(2, i, 0));
        Assert.Equal(0, variables, tolerance: 4 / Math.Sqrt(20_000));
        Assert.Equal(0, seeds, tolerance: 4 / Math.Sqrt(20_000));
    }
}
