namespace DayBrief.BoundaryLayer;

public sealed class UvIndexTests
{
    /// <summary>[Madronich2007], abstract: 12.5 with the sun overhead and 300 DU; the powers 2.42 and −1.23.</summary>
    [Theory]
    [InlineData(1, 300, 12.5)]
    [InlineData(0.5, 300, 2.336)]
    [InlineData(1, 600, 5.329)]
    [InlineData(-0.2, 300, 0)]
    public void The_index_is_that_of_Madronich2007(double cosZenith, double ozone, double expected) =>
        Assert.Equal(expected, UvIndex.ClearSky(cosZenith, ozone), tolerance: 0.001);

    /// <summary>[NIWA]: at Lauder (45° south) the highest index of the day is about 10 at the summer solstice and about 1 at
    /// the winter solstice. "About" is taken as one; the sun stands 68.4° and 21.6° high.</summary>
    [Theory]
    [InlineData(68.4, 10)]
    [InlineData(21.6, 1)]
    public void The_index_at_45_degrees_is_that_measured(double elevationDegrees, double expected) =>
        Assert.Equal(expected, UvIndex.ClearSky(Math.Sin(elevationDegrees * Math.PI / 180)), tolerance: 1);

    /// <summary>[Allaart2004], another fit to other measurements (coefficients from memory): within 15 % while the sun is so
    /// high that the index matters.</summary>
    [Theory]
    [InlineData(30)]
    [InlineData(45)]
    [InlineData(60)]
    [InlineData(75)]
    public void The_index_agrees_with_another_formula(double elevationDegrees)
    {
        var cosZenith = Math.Sin(elevationDegrees * Math.PI / 180);
        var slant = (cosZenith * 0.83) + 0.17;
        var lessOzone = 1000 * slant / 320;
        var other = ((2.0 * Math.Pow(lessOzone, 1.62)) + (280.0 / 320) + 1.4) * 1.24 * slant * Math.Exp(-0.58 / slant);
        Assert.Equal(1, UvIndex.ClearSky(cosZenith, 320) / other, tolerance: 0.15);
    }

    [Theory]
    [InlineData(1.01, 300)]
    [InlineData(double.NaN, 300)]
    [InlineData(1, 50)]
    public void Impossible_numbers_are_refused(double cosZenith, double ozone) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => UvIndex.ClearSky(cosZenith, ozone));
}
