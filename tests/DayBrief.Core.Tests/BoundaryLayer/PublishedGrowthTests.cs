namespace DayBrief.BoundaryLayer;

/// <summary>The mixed layer against other models' published runs.</summary>
public sealed class PublishedGrowthTests
{
    /// <summary>[Vila2015] CLASS, default set-up and three variants, every half hour from 1 h on. Depth and w* 3 %, θ
    /// 0.2 K, q 0.2 g/kg as asked for: the same equations with other time stepping. LCL 5 %: there e = q p/0.622
    /// (1.4 % more vapour pressure at 8.7 g/kg) and the pressure falls linearly.</summary>
    [Theory]
    [InlineData(0)]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(3)]
    public void Growth_matches_CLASS(int variant)
    {
        var rows = PublishedGrowth.AgainstClass(PublishedGrowth.ClassVariants[variant]).ToArray();
        Assert.True(rows.Length >= 20);
        foreach (var (_, theirs, ours) in rows)
        {
            Assert.Equal(theirs[0], ours[0], tolerance: 0.03 * theirs[0]);
            Assert.Equal(theirs[1], ours[1], tolerance: 0.2);
            Assert.Equal(theirs[2], ours[2], tolerance: 0.2);
            Assert.Equal(theirs[3], ours[3], tolerance: 0.03 * theirs[3]);
            Assert.Equal(theirs[4], ours[4], tolerance: 0.05 * theirs[4]);
        }
    }

    /// <summary>UCLALES, 4 K/km and 0.06 K m/s from the ground up, from 1 h on: between the heights of least flux and of
    /// greatest gradient, which differ by 5 to 16 %, widened by 5 % as asked for.</summary>
    [Fact]
    public void Growth_lies_between_the_two_heights_of_UCLALES() => AssertBetween(PublishedGrowth.AgainstUclales());

    /// <summary>DALES under a weak inversion: as above.</summary>
    [Fact]
    public void Growth_lies_between_the_two_heights_of_DALES() => AssertBetween(PublishedGrowth.AgainstDales());

    private static void AssertBetween(IEnumerable<PublishedGrowth.HeightRow> rows)
    {
        var all = rows.ToArray();
        Assert.True(all.Length >= 4);
        Assert.All(all, row => Assert.InRange(row.OursM, 0.95 * row.LeastFluxM, 1.05 * row.GreatestGradientM));
    }
}
