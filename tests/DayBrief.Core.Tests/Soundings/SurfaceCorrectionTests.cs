using DayBrief.Thermodynamics;
using DayBrief.Units;

namespace DayBrief.Soundings;

public sealed class SurfaceCorrectionTests
{
    /// <summary>By hand: 18 °C observed at 1000 hPa on an ascent of 12, 14 and 10 °C at 1000, 985 and 950 hPa. Lifted dry it has
    /// 16.7 °C at 985 hPa and 13.8 °C at 950 hPa, warmer than the ascent, and at 900 hPa 9.4 °C, colder than its 11 °C: the two
    /// lower levels go on the adiabat [AMS], the third stays.</summary>
    [Fact]
    public void Observed_warmth_mixes_the_layer_that_it_reaches()
    {
        var corrected = SurfaceCorrection.Apply(Ascent(), Temperature.FromCelsius(18), Temperature.FromCelsius(9));
        var celsius = corrected.Levels.Select(level => level.Temperature!.Value.Celsius).ToArray();
        Assert.Equal(18, celsius[0], tolerance: 1e-9);
        Assert.Equal(16.7, celsius[1], tolerance: 0.1);
        Assert.Equal(13.8, celsius[2], tolerance: 0.1);
        Assert.Equal(11, celsius[3], tolerance: 1e-9);
        Assert.Equal(
            DryAdiabat.PotentialTemperature(Temperature.FromCelsius(18), Pressure.FromHectopascals(1000)).Kelvins,
            DryAdiabat.PotentialTemperature(corrected.Levels[2].Temperature!.Value, Pressure.FromHectopascals(950)).Kelvins,
            tolerance: 1e-9);
    }

    [Fact]
    public void Observed_cold_changes_the_surface_only_and_says_so()
    {
        var corrected = SurfaceCorrection.Apply(Ascent(), Temperature.FromCelsius(8), Temperature.FromCelsius(9));
        Assert.Equal([8, 14, 10, 11, 5, 0], corrected.Levels.Select(level => Math.Round(level.Temperature!.Value.Celsius, 6)));
        Assert.Equal(8, corrected.Surface.DewPoint!.Value.Celsius, tolerance: 1e-9);
        Assert.Contains(corrected.Remarks, remark => remark.Code == "surface-corrected");
    }

    internal static Sounding Ascent(double shiftK = 0) => new()
    {
        Source = new SoundingSource { Format = "test" },
        Levels =
        [
            .. new[] { (1000.0, 12.0), (985, 14), (950, 10), (900, 11), (850, 5), (700, 0) }.Select(pair => new SoundingLevel
            {
                Pressure = Pressure.FromHectopascals(pair.Item1),
                Temperature = Temperature.FromCelsius(pair.Item2 + shiftK),
                DewPoint = Temperature.FromCelsius(pair.Item2 + shiftK - 6),
            }),
        ],
    };
}
