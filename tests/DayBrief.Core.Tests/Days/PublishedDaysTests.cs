using DayBrief.House;

namespace DayBrief.Days;

/// <summary>Whole days against observations and large-eddy simulations (shared reference data). Parameters are the
/// defaults everywhere; only what a case prescribes is set.</summary>
public sealed class PublishedDaysTests
{
    /// <summary>Wangara Day 33 with the flux of the published model case: the acceptance band that spans two independent
    /// published simulations, widened by 30 to 50 m.</summary>
    [Theory]
    [InlineData(12, 850, 1100)]
    [InlineData(14, 1080, 1280)]
    [InlineData(16, 1200, 1450)]
    public void Wangara_depth_lies_in_the_acceptance_band(int hour, double low, double high) =>
        Assert.InRange(Cases.At(Cases.Wangara("Golaz2002"), hour).MixedLayerDepthM!.Value, low, high);

    /// <summary>Nakanishi and Niino (2009) Table 1, w* 1.00, 1.94, 2.09, 1.91 m/s, with their flux; 10 % as asked for.</summary>
    [Theory]
    [InlineData(10, 1.00)]
    [InlineData(12, 1.94)]
    [InlineData(14, 2.09)]
    [InlineData(16, 1.91)]
    public void Wangara_velocity_scale_matches_Nakanishi_and_Niino(int hour, double expected) =>
        Assert.Equal(expected, Cases.At(Cases.Wangara("NN09"), hour).ConvectiveVelocityScaleMs!.Value, tolerance: 0.1 * expected);

    /// <summary>ARM, 21 June 1997: the large-eddy run has its first cloud at 14.3 UTC and 1 % cover at 15.35; asked
    /// for is 14.3 to 16. Its base was 758 m at 15.5 and 811 m at 16 UTC: within 150 m near the onset.</summary>
    [Fact]
    public void First_cumulus_comes_when_and_where_the_ARM_case_has_it()
    {
        var day = Cases.Arm();
        var hour = day.Times.FirstCloud!.Value.UtcDateTime.TimeOfDay.TotalHours;
        Assert.InRange(hour, 14.3, 16);
        Assert.Equal(785, day.Cloud.FirstBase!.Value.Metres, tolerance: 150);
    }

    /// <summary>Same run, 21.3 UTC: mean cloud top 1698 m, highest 2970 m. Ordinary cumulus must top out between, and the
    /// cover that the ground sees be of the order of the run's 0.2 to 0.4 (2 to 3 oktas), here within one okta.</summary>
    [Fact]
    public void Cumulus_grows_as_in_the_ARM_case()
    {
        var step = Cases.At(Cases.Arm(), 15, 20);
        Assert.InRange(step.CloudTopAglM!.Value, 1698, 2970);
        Assert.InRange(step.CloudCoverOktas!.Value, 1, 4);
    }

    /// <summary>13 pairs of the Southern Great Plains, depths known to ±250 m: at most 0.8 of the plain parcel method's
    /// mean absolute error of 318 m, bias within ±100 m.</summary>
    [Fact]
    public void Depths_over_the_Great_Plains_beat_the_plain_parcel_method()
    {
        var errors = Errors("SGP97");
        Assert.Equal(13, errors.Length);
        Assert.InRange(errors.Average(Math.Abs), 0, 0.8 * 318);
        Assert.InRange(errors.Average(), -100, 100);
    }

    /// <summary>31 pairs of San Diego: at most 1.2 times the plain parcel method's 112 m, bias within ±100 m.</summary>
    [Fact]
    public void Depths_over_the_coast_stay_near_the_plain_parcel_method()
    {
        var errors = Errors("KNKX");
        Assert.Equal(31, errors.Length);
        Assert.InRange(errors.Average(Math.Abs), 0, 1.2 * 112);
        Assert.InRange(errors.Average(), -100, 100);
    }

    /// <summary>31 pairs of Kirov, depth by the layer's own top (mean θv + 0.5 K): at most 0.75 of the plain parcel method's 483 m,
    /// though on some days the air mass changed.</summary>
    [Fact]
    public void Depths_over_the_continent_beat_the_plain_parcel_method()
    {
        var errors = Errors("USKK");
        Assert.Equal(31, errors.Length);
        Assert.InRange(errors.Average(Math.Abs), 0, 0.75 * 483);
    }

    /// <summary>A range from 10 to 90 % should hold 80 % of what happens; over all 75 pairs of three sites 70 to 90 % as asked
    /// for, with a given maximum and without one.</summary>
    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void The_range_holds_as_many_observed_depths_as_it_says(bool given)
    {
        Repository.Shared("cases", "pairs");
        Assert.InRange(Cases.Pairs.Value.Count(pair => given ? pair.InRange : pair.FreeInRange) / 75.0, 0.7, 0.9);
    }

    private static double[] Errors(string site)
    {
        Repository.Shared("cases", "pairs");
        return [.. Cases.Pairs.Value.Where(pair => pair.Site == site).Select(pair => pair.AtM - pair.ObservedM)];
    }
}
