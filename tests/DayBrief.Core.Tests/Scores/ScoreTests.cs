namespace DayBrief.Scores;

public sealed class ScoreTests
{
    /// <summary>CRPS of normal distributions in closed form (Hersbach 2000; Gneiting and Raftery 2007): N(0, 1) at 0 is 0.23369, at 1 is
    /// 0.60244; N(2, 1.5) at 3.2 is 0.71434.</summary>
    [Theory]
    [InlineData(0, 1, 0, 0.23369)]
    [InlineData(0, 1, 1, 0.60244)]
    [InlineData(2, 1.5, 3.2, 0.71434)]
    public void A_normal_distribution_told_by_its_quantiles_has_its_score(double mean, double deviation, double truth, double expected)
    {
        var ninety = 1.2815515594 * deviation;
        // Half normals end six deviations out, and each side has 1,000 cells.
        Assert.Equal(expected, new Told(mean, mean - ninety, mean + ninety).Crps(truth), 0.0005);
    }

    [Fact]
    public void Without_a_range_the_score_is_the_absolute_error() => Assert.Equal(3, new Told(5).Crps(8));

    /// <summary>Bias, mean absolute error and the mean of the others, by hand: told 3, 5 and true 2, 6; parcel 4 and 6.</summary>
    [Fact]
    public void Bias_error_and_rivals_are_those_computed_by_hand()
    {
        var score = Score.Of([(new Told(3, 1, 4, 4), 2), (new Told(5, 4, 5.5, 6), 6)])!;
        Assert.Equal((2, 0, 1), (score.N, score.Bias, score.Mae));
        Assert.Equal(1, score.ParcelMae);
        Assert.Equal(4, score.ClimatologyMae);
        Assert.Equal(50, score.InRangePct);
    }

    [Fact]
    public void Nothing_told_has_no_score() => Assert.Null(Score.Of([]));
}
