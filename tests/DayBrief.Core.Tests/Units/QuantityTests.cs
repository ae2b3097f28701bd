namespace DayBrief.Units;

/// <summary>Exact conversions by definition [SI], and numbers that no quantity may hold.</summary>
public sealed class QuantityTests
{
    [Fact]
    public void Conversions_are_the_defined_ones()
    {
        Assert.Equal(0.3048, Altitude.FromFeet(1).Metres, tolerance: 1e-12);
        Assert.Equal(0.514444, Speed.FromKnots(1).MetresPerSecond, tolerance: 1e-6);
        Assert.Equal(273.15, Temperature.FromCelsius(0).Kelvins, tolerance: 1e-12);
        Assert.Equal(100, Pressure.FromHectopascals(1).Pascals, tolerance: 1e-12);
    }

    [Fact]
    public void Impossible_numbers_are_refused()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => Temperature.FromCelsius(-273.16));
        Assert.Throws<ArgumentOutOfRangeException>(() => Pressure.FromHectopascals(double.NaN));
        Assert.Throws<ArgumentOutOfRangeException>(() => Wind.From(361, Speed.FromKnots(5)));
        Assert.Throws<ArgumentOutOfRangeException>(() => Height.FromMetres(double.PositiveInfinity));
    }

    /// <summary>A wind from the west blows towards the east, and its components give it back.</summary>
    [Fact]
    public void Wind_and_its_components_are_the_same_wind()
    {
        var west = Wind.From(270, Speed.FromMetresPerSecond(10));
        Assert.Equal(10, west.EastwardMs, tolerance: 1e-9);
        Assert.Equal(270, Wind.FromComponents(west.EastwardMs, west.NorthwardMs).FromDegrees, tolerance: 1e-9);
    }
}
