using DayBrief.Units;

namespace DayBrief.Thermodynamics;

public sealed class HumidityTests
{
    /// <summary>[MetPy] test: 25 °C, dew point 15 °C gives 53.80 % (printed to two decimals).</summary>
    [Fact]
    public void Relative_humidity_matches_the_MetPy_test_value() =>
        Assert.Equal(53.80, Humidity.RelativePercent(Temperature.FromCelsius(25), Temperature.FromCelsius(15)), 0.01);

    /// <summary>[MetPy] tests of the dew point from humidity, given there as 11, 1 and 22 °C to the nearest degree.</summary>
    [Theory]
    [InlineData(30, 30, 11)]
    [InlineData(10, 55, 1)]
    [InlineData(25, 85, 22)]
    public void Dew_point_from_relative_humidity_matches_the_MetPy_tests(double celsius, double percent, double expected) =>
        Assert.Equal(expected, Humidity.DewPoint(Temperature.FromCelsius(celsius), percent).Celsius, tolerance: 0.5);

    /// <summary>[MetPy] test of the saturation mixing ratio: 288 K at 999 hPa gives 0.01068 kg/kg.</summary>
    [Fact]
    public void Saturation_mixing_ratio_matches_the_MetPy_test_value() =>
        Assert.Equal(10.68, Humidity.Of(Temperature.FromKelvins(288), Pressure.FromHectopascals(999)).GramsPerKilogram, 0.02);

    /// <summary>Mixing ratio to dew point and back at the same pressure is exact but for rounding.</summary>
    [Fact]
    public void Dew_point_inverts_the_mixing_ratio()
    {
        var pressure = Pressure.FromHectopascals(850);
        var ratio = Humidity.Of(Temperature.FromCelsius(7.3), pressure);
        Assert.Equal(7.3, Humidity.DewPoint(ratio, pressure).Celsius, tolerance: 1e-9);
    }

    /// <summary>[MetPy] 1.6 for the surface of Jackson, 22 September 2006 (reference data): 24.4 °C, 22.8 °C, 1000 hPa.</summary>
    [Fact]
    public void Virtual_temperature_matches_MetPy() =>
        Assert.Equal(
            27.554,
            Humidity.Virtual(
                Temperature.FromCelsius(24.4),
                Humidity.Of(Temperature.FromCelsius(22.8), Pressure.FromHectopascals(1000))).Celsius,
            tolerance: 0.002);
}
