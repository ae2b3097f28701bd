using DayBrief.Thermodynamics;
using DayBrief.Units;

namespace DayBrief.BoundaryLayer;

public sealed class ConvectiveVelocityTests
{
    /// <summary>[Deardorff1970] by hand for density 1.2 kg/m³, 293 K, c_p 1005 J/kg/K, given to two decimals; 1 % as
    /// asked for.</summary>
    [Theory]
    [InlineData(50, 500, 0.89)]
    [InlineData(100, 1000, 1.41)]
    [InlineData(200, 1500, 2.03)]
    [InlineData(250, 2000, 2.40)]
    [InlineData(300, 2500, 2.75)]
    [InlineData(400, 3000, 3.22)]
    public void Matches_the_reference_table(double heatWm2, double depthM, double expected)
    {
        var actual = ConvectiveVelocity.Of(heatWm2 / (1.2 * 1005), Height.FromMetres(depthM), Temperature.FromKelvins(293));
        Assert.Equal(expected, actual!.Value.MetresPerSecond, tolerance: 0.01 * expected);
    }

    /// <summary>Open university course book with answers (boundary-layer meteorology, week 4, ex. 3a): g/θ_v 1/30, flux
    /// 0.1 K m/s, 1000 m gives 1.49 m/s.</summary>
    [Fact]
    public void Matches_the_course_book() =>
        Assert.Equal(
            1.49,
            ConvectiveVelocity.Of(0.1, Height.FromMetres(1000), Temperature.FromKelvins(30 * Air.Gravity))!.Value.MetresPerSecond,
            tolerance: 0.01);

    /// <summary>By definition: nothing rises from ground that cools the air.</summary>
    [Theory]
    [InlineData(0, 1000)]
    [InlineData(-0.02, 1000)]
    [InlineData(0.1, 0)]
    public void Has_no_answer_without_heating(double flux, double depthM) =>
        Assert.Null(ConvectiveVelocity.Of(flux, Height.FromMetres(depthM), Temperature.FromKelvins(293)));
}
