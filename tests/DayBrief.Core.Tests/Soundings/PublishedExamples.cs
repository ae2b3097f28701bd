using DayBrief.Units;

namespace DayBrief.Soundings;

/// <summary>Worked examples printed in handbooks and library documentation.</summary>
public sealed class PublishedExamples
{
    private static readonly double[] LincolnHpa =
        [993, 984, 957, 948, 925, 917, 886, 868, 850, 841, 813, 806, 798, 738, 732, 723, 716, 711, 700, 623, 621, 582, 541, 500, 468];

    private static readonly double[] LincolnC =
        [34.6, 33.7, 31.1, 30.1, 27.8, 27.1, 24.3, 22.6, 21.4, 20.8, 19.6, 19.4, 18.7, 13.0, 13.0, 13.4, 13.5, 13.6, 13.0, 5.2, 5.0, 1.5, -2.4, -6.7, -10.7];

    private static readonly double[] LincolnDewC =
        [19.6, 19.4, 18.7, 18.4, 17.8, 17.5, 16.3, 15.6, 12.4, 10.8, -0.4, -3.6, -3.8, -5.0, -6.0, -15.6, -13.2, -11.4, -11.0, -5.8, -6.2, -14.8, -24.3, -34.7, -38.1];

    /// <summary>[MetPy] documentation of ccl (Lincoln IL, 17 June 2022): 763.006 hPa, 15.430 °C, 37.991 °C.
    /// The library draws the mixing-ratio line straight between levels; the exact line crosses 0.02 hPa higher.</summary>
    [Fact]
    public void Lincoln_condensation_level_and_convective_temperature_match_the_MetPy_example()
    {
        var ccl = ConvectiveCondensation.Of(Lincoln())!.Value;
        Assert.Equal(763.006, ccl.Pressure.Hectopascals, tolerance: 0.05);
        Assert.Equal(15.430, ccl.Temperature.Celsius, tolerance: 0.005);
        Assert.Equal(37.991, ccl.ConvectiveTemperature.Celsius, tolerance: 0.005);
    }

    /// <summary>The same ascent, thermal index of 36 °C computed apart from this program: −2.00 at 925 and −1.17 at 850 hPa.</summary>
    [Fact]
    public void Lincoln_thermal_index_is_negative_where_the_thermal_is_warmer()
    {
        var surface = Temperature.FromCelsius(36);
        Assert.Equal(-2.00, DryTop.ThermalIndex(Lincoln(), surface, Pressure.FromHectopascals(925))!.Value.Kelvins, 0.01);
        Assert.Equal(-1.17, DryTop.ThermalIndex(Lincoln(), surface, Pressure.FromHectopascals(850))!.Value.Kelvins, 0.01);
    }

    /// <summary>[FAA-13A] chapter 9: (16 − (−9)) + 12 − (6 − 0) = 31.</summary>
    [Fact]
    public void K_index_matches_the_handbook_example() =>
        Assert.Equal(31, KIndex.Of(Column([900, 850, 700, 500], [18, 16, 6, -9], [14, 12, 0, -20]))!.Value, tolerance: 1e-9);

    /// <summary>A ground inversion of a sounding coded in tenths: base at the ground, 3.4 K over its two lowest layers; the
    /// values are the ascent's own differences, the height by hand from the hypsometric equation (29.27 m/K × 282.2 K × ln(1000/970)).</summary>
    [Fact]
    public void Neighbouring_layers_that_warm_upwards_are_one_inversion()
    {
        var inversion = Assert.Single(Inversion.Of(Column([1000, 985, 970, 850, 700], [8, 9.6, 11.4, 4, -5], [2, 1, 0, -6, -14])));
        Assert.Equal(0, inversion.Base.Metres);
        Assert.Equal(3.4, inversion.Strength.Kelvins, tolerance: 1e-9);
        Assert.Equal(252.2, inversion.Top.Metres, tolerance: 1.0);
    }

    private static Profile Lincoln() => Column(LincolnHpa, LincolnC, LincolnDewC);

    private static Profile Column(double[] hpa, double[] celsius, double[] dewPoint) => Profile.Of(new Sounding
    {
        Source = new SoundingSource { Format = "test" },
        Levels =
        [
            .. hpa.Select((p, i) => new SoundingLevel
            {
                Pressure = Pressure.FromHectopascals(p),
                Temperature = Temperature.FromCelsius(celsius[i]),
                DewPoint = Temperature.FromCelsius(dewPoint[i]),
            }),
        ],
    });
}
