namespace DayBrief.Thermodynamics;

public sealed class MoistPathTests
{
    /// <summary>Against the pseudoadiabat itself in steps of 0.02 and less; 0.0002 K all of one sign would move CAPE by
    /// R_d · 0.0002 K · ln(1000/100) = 0.13 J/kg, below its rounding in the analysis.</summary>
    [Theory]
    [InlineData(1000, 30)]
    [InlineData(1000, 10)]
    [InlineData(850, -5)]
    [InlineData(700, -20)]
    public void The_cubics_follow_the_pseudoadiabat(double hpa, double celsius)
    {
        var path = new MoistPath(hpa, celsius + 273.15);
        for (var p = hpa - 0.5; p > 100; p -= 3.7)
        {
            Assert.Equal(MoistAdiabat.MovedKelvins(celsius + 273.15, hpa, p), path.KelvinsAt(Math.Log(p)), tolerance: 2e-4);
        }
    }
}
