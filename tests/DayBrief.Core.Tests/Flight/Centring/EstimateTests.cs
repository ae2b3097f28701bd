namespace DayBrief.Flight.Centring;

public sealed class EstimateTests
{
    /// <summary>Worked by hand: 1, 2, 3, 4 have mean 2.5, sample variance 5/3, standard error √(5/12).</summary>
    [Fact]
    public void An_estimate_is_the_mean_with_its_standard_error()
    {
        var estimate = Estimate.Of([1, 2, 3, 4], scale: 2);
        Assert.Equal(5, estimate.Mean, tolerance: 1e-12);
        Assert.Equal(2 * 1.96 * Math.Sqrt(5.0 / 12), estimate.HalfWidth95, tolerance: 1e-12);
    }

    /// <summary>By the meaning of common random numbers: what two ways have in common drops out of the interval.</summary>
    [Fact]
    public void A_constant_difference_has_no_uncertainty()
    {
        var difference = Estimate.OfDifference([3, 8, -1], [1, 6, -3]);
        Assert.Equal(2, difference.Mean);
        Assert.Equal(0, difference.HalfWidth95);
    }

    /// <summary>The meaning of 95 %: of 400 intervals of normal samples about 380 hold the true mean; four standard errors (4.4) allowed.</summary>
    [Fact]
    public void Ninety_five_per_cent_of_the_intervals_hold_the_true_mean()
    {
        var random = Numerics.CounterRandom.FromSeed(3);
        var held = Enumerable.Range(0, 400).Count(sample =>
        {
            var estimate = Estimate.Of([.. Enumerable.Range(0, 200).Select(draw => (float)random.Stream(sample).Normal(draw))]);
            return Math.Abs(estimate.Mean) < estimate.HalfWidth95;
        });
        Assert.InRange(held, 380 - 18, 380 + 18);
    }
}
