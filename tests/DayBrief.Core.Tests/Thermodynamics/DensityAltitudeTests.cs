using DayBrief.Units;

namespace DayBrief.Thermodynamics;

public sealed class DensityAltitudeTests
{
    /// <summary>[FAA-25] sample problem: pressure altitude 5,048 ft and 30 °C give 7,855 ft; the pressure there is that of the
    /// standard atmosphere [ICAO7488]. The handbook reads its table to about 10 ft.</summary>
    [Theory]
    [InlineData(5048, 30, 7855)]
    [InlineData(5048, -25, 1232)]
    public void Density_altitude_matches_the_handbook(double pressureAltitudeFt, double celsius, double expectedFt)
    {
        var pressure = Pressure.FromHectopascals(1013.25 * Math.Pow(1 - (0.0065 * pressureAltitudeFt * 0.3048 / 288.15), 5.2559));
        Assert.Equal(expectedFt, DensityAltitude.Of(pressure, Temperature.FromCelsius(celsius)).Feet, tolerance: 10.0);
    }
}
