using DayBrief.Units;

namespace DayBrief.BoundaryLayer;

public sealed class RadiationTests
{
    /// <summary>[HoltslagUlden1983] eq. 1 at 45° computed by hand: 990 · 0.70711 − 30 = 670.0; below the horizon none.</summary>
    [Theory]
    [InlineData(45, 670.0)]
    [InlineData(90, 960.0)]
    [InlineData(1, 0)]
    [InlineData(-20, 0)]
    public void Clear_sky_light_follows_the_published_line(double elevation, double expected) =>
        Assert.Equal(expected, Radiation.ClearSkyWm2(elevation), tolerance: 0.05);

    /// <summary>[KastenCzeplak1980] 1 − 0.75 (N/8)^3.4 by hand to three figures.</summary>
    [Theory]
    [InlineData(0, 1)]
    [InlineData(4, 0.929)]
    [InlineData(6, 0.718)]
    [InlineData(8, 0.25)]
    public void Cloud_lets_the_published_share_through(double oktas, double expected) =>
        Assert.Equal(expected, Radiation.Transmitted(oktas), tolerance: 0.0005);

    /// <summary>[HoltslagUlden1983]: K 670 W/m², albedo 0.23, 20 °C, clear gives 387.7 W/m² by hand.</summary>
    [Fact]
    public void Net_radiation_matches_the_hand_computed_case() =>
        Assert.Equal(387.7, Radiation.NetWm2(670, 0.23, Temperature.FromCelsius(20), 0), tolerance: 0.1);

    /// <summary>[HoltslagUlden1983] Table 5, γ/s at 1000 hPa from −5 to 35 °C; it is printed to two figures and with
    /// another saturation formula, so 4 %.</summary>
    [Theory]
    [InlineData(0, 1.44)]
    [InlineData(10, 0.79)]
    [InlineData(20, 0.45)]
    [InlineData(30, 0.27)]
    public void Psychrometric_ratio_matches_table_5(double celsius, double expected) =>
        Assert.Equal(expected, Radiation.PsychrometricOverSlope(celsius + 273.15, 1000), tolerance: 0.04 * expected);

    /// <summary>[HoltslagUlden1983] eqs. 14–15 with Q* 387.7, G 38.8, 20 °C: α 1 gives H 88.3 and LE 260.6; α 0.45 gives
    /// H 220.6, by hand. 3 W/m² for γ/s to two figures.</summary>
    [Theory]
    [InlineData(1, 88.3, 260.6)]
    [InlineData(0.45, 220.6, 128.3)]
    public void Heat_is_shared_out_as_published(double moisture, double sensible, double latent)
    {
        var balance = EnergyBalance.Of(
            387.7, new GroundSurface(0.23, 0.1, moisture, 0.03), Temperature.FromCelsius(20), Pressure.FromHectopascals(1000));
        Assert.Equal(sensible, balance.SensibleWm2, tolerance: 3);
        Assert.Equal(latent, balance.LatentWm2, tolerance: 3);
        Assert.Equal(38.8, balance.GroundWm2, tolerance: 0.1);
    }

    /// <summary>Open lecture notes (UBC GEOS 300, lecture 3): Q* 250, G 75, ratio 5 gives 145.83 and 29.17 W/m².</summary>
    [Fact]
    public void Bowen_ratio_shares_as_in_the_lecture()
    {
        var balance = EnergyBalance.WithBowenRatio(250, 75, 5);
        Assert.Equal(145.83, balance.SensibleWm2, tolerance: 0.005);
        Assert.Equal(29.17, balance.LatentWm2, tolerance: 0.005);
    }
}
