using DayBrief.Units;

namespace DayBrief.Thermodynamics;

public sealed class SaturationTests
{
    /// <summary>[MetPy] test values (saturation vapour pressure, printed to two decimals).</summary>
    [Theory]
    [InlineData(5, 8.72)]
    [InlineData(10, 12.27)]
    [InlineData(18, 20.63)]
    [InlineData(25, 31.67)]
    public void OverWater_matches_the_MetPy_test_values(double celsius, double expectedHpa) =>
        Assert.Equal(expectedHpa, Saturation.OverWater(Temperature.FromCelsius(celsius)).Hectopascals, tolerance: 0.005);

    /// <summary>[WMO8] annex 4.B, e = 6.112 exp(17.62 t/(243.12 + t)): another fit to the same curve, so 0.3 %, the
    /// accuracy that [Bolton1980] states.</summary>
    [Theory]
    [InlineData(-30, 0.5108)]
    [InlineData(0, 6.112)]
    [InlineData(20, 23.326)]
    [InlineData(30, 42.337)]
    public void OverWater_agrees_with_the_WMO_formula(double celsius, double expectedHpa) =>
        Assert.Equal(expectedHpa, Saturation.OverWater(Temperature.FromCelsius(celsius)).Hectopascals, tolerance: 0.003 * expectedHpa);

    /// <summary>[Bolton1980] eq. 11 inverts eq. 10 exactly, so only rounding remains.</summary>
    [Theory]
    [InlineData(-40)]
    [InlineData(12.5)]
    public void DewPoint_inverts_OverWater(double celsius) =>
        Assert.Equal(celsius, Saturation.DewPoint(Saturation.OverWater(Temperature.FromCelsius(celsius))).Celsius, tolerance: 1e-9);
}
