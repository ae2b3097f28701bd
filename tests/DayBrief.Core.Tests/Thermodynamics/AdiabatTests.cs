using DayBrief.Units;

namespace DayBrief.Thermodynamics;

public sealed class AdiabatTests
{
    /// <summary>[MetPy] tests of the potential temperature (their κ differs in the fourth figure, hence 0.01 K).</summary>
    [Theory]
    [InlineData(278, 900, 286.496)]
    [InlineData(293, 800, 312.289)]
    public void Potential_temperature_matches_the_MetPy_tests(double kelvins, double hpa, double expected) =>
        Assert.Equal(
            expected,
            DryAdiabat.PotentialTemperature(Temperature.FromKelvins(kelvins), Pressure.FromHectopascals(hpa)).Kelvins,
            tolerance: 0.01);

    /// <summary>[SeinfeldPandis] p. 724: g/c_p is 9.76 K/km.</summary>
    [Fact]
    public void Dry_lapse_rate_is_the_textbook_value() => Assert.Equal(9.76, Air.DryLapseRate * 1000, tolerance: 0.01);

    /// <summary>[MetPy] tests of moist_lapse (degree tables computed there with an adaptive solver): 0.05 K, as its
    /// constants differ in the fifth figure.</summary>
    [Theory]
    [InlineData(293, 1000, 800, 284.64)]
    [InlineData(293, 1000, 600, 272.81)]
    [InlineData(293, 1000, 500, 264.42)]
    [InlineData(293, 1000, 400, 252.91)]
    public void Moist_adiabat_matches_the_MetPy_tests(double kelvins, double from, double to, double expected) =>
        Assert.Equal(
            expected,
            MoistAdiabat.Moved(Temperature.FromKelvins(kelvins), Pressure.FromHectopascals(from), Pressure.FromHectopascals(to)).Kelvins,
            tolerance: 0.05);

    /// <summary>[MetPy] test of lcl: 30 °C, dew point 20 °C at 1000 hPa gives 864.806 hPa and 17.676 °C.</summary>
    [Fact]
    public void Lifted_condensation_level_matches_the_MetPy_test()
    {
        var lcl = LiftedCondensation.Of(
            Pressure.FromHectopascals(1000), Temperature.FromCelsius(30), Temperature.FromCelsius(20));
        Assert.Equal(864.806, lcl.Pressure.Hectopascals, tolerance: 0.05);
        Assert.Equal(17.676, lcl.Temperature.Celsius, tolerance: 0.005);
    }

    /// <summary>[Romps2017] reference code: 10⁵ Pa, 300 K, humidity 0.5 gives 1433.844 m. Ours neglects the
    /// heat capacity of the vapour, as the trade's diagrams do: 0.85 q of the height; the vapour formulas differ by
    /// 0.3 % and the dry constants by 0.1 %.</summary>
    [Theory]
    [InlineData(300, 50, 1433.8)]
    [InlineData(300, 80, 483.8)]
    [InlineData(280, 50, 1201.4)]
    public void Lifted_condensation_height_agrees_with_the_exact_formula(double kelvins, double percent, double expectedM)
    {
        var temperature = Temperature.FromKelvins(kelvins);
        var dewPoint = Humidity.DewPoint(temperature, percent);
        var vapour = Humidity.Of(dewPoint, Pressure.FromPascals(1e5)).KilogramsPerKilogram;
        var lcl = LiftedCondensation.Of(Pressure.FromPascals(1e5), temperature, dewPoint);
        var height = (temperature.Kelvins - lcl.Temperature.Kelvins) / Air.DryLapseRate;
        Assert.Equal(expectedM, height, tolerance: ((0.85 * vapour) + 0.004) * expectedM);
    }

    [Fact]
    public void Saturated_air_condenses_where_it_is()
    {
        var lcl = LiftedCondensation.Of(
            Pressure.FromHectopascals(990), Temperature.FromCelsius(12), Temperature.FromCelsius(12));
        Assert.Equal(990, lcl.Pressure.Hectopascals, tolerance: 1e-4);
    }

    /// <summary>[WallaceHobbs] exercise: the 1000–500 hPa thickness is 5846 m at 288 K and 4730 m at 233 K mean virtual
    /// temperature; their rounded R/g gives 3 m more.</summary>
    [Theory]
    [InlineData(288, 5846)]
    [InlineData(233, 4730)]
    public void Thickness_matches_the_textbook(double kelvins, double expectedM) =>
        Assert.Equal(
            expectedM,
            Hypsometry.Thickness(
                Pressure.FromHectopascals(1000), Pressure.FromHectopascals(500), Temperature.FromKelvins(kelvins)).Metres,
            tolerance: 5.0);
}
