using DayBrief.Soundings.Formats.Typed;

namespace DayBrief.Soundings;

/// <summary>Ground at saturation: a dew or fog morning. Rounding must not decide what is told. Ascents are invented.</summary>
public sealed class SaturatedGroundTests
{
    // Saturated at the ground, 4 °C warmer 300 m up, then 0.65 °C per 100 m colder.
    private static readonly (double Hpa, double Celsius)[] Inversion =
        [(1000, 10), (990, 11.5), (965, 14), (925, 12), (850, 7), (800, 3.5), (700, -4), (600, -12), (500, -21)];

    // Saturated at the ground and colder above.
    private static readonly (double Hpa, double Celsius)[] Falling =
        [(1000, 10), (990, 9.4), (965, 7.6), (925, 5), (850, 0), (800, -3), (700, -10), (600, -18), (500, -27)];

    public static TheoryData<double> Shifts => [.. Enumerable.Range(0, 44).Select(i => -2 + (0.5 * i))];

    /// <summary>Every shift of one shape makes cloud in the same way: over the warm air, several degrees warmer than now.</summary>
    [Theory]
    [MemberData(nameof(Shifts))]
    public void Warm_air_over_saturated_ground_means_the_crossing_over_it(double shift)
    {
        var ccl = Of(Inversion, shift, 0)!.Value;
        Assert.InRange(ccl.Height.Metres, 400, 1600);
        Assert.InRange(ccl.ConvectiveTemperature.Celsius - (10 + shift), 4, 12);
        foreach (var (temperature, dewPoint) in new[] { (0.1, 0.1), (-0.1, -0.1), (0.1, 0.0), (0.0, -0.1), (0.05, 0.02), (0.0, -0.001) })
        {
            var near = Of(Inversion, shift + temperature, dewPoint - temperature)!.Value;
            Assert.Equal(ccl.ConvectiveTemperature.Celsius, near.ConvectiveTemperature.Celsius, tolerance: 0.35);
        }
    }

    [Theory]
    [MemberData(nameof(Shifts))]
    public void Colder_air_over_saturated_ground_means_the_ground(double shift)
    {
        var ccl = Of(Falling, shift, 0)!.Value;
        Assert.Equal(0, ccl.Height.Metres, tolerance: 1);
        Assert.Equal(10 + shift, ccl.ConvectiveTemperature.Celsius, tolerance: 0.02);

        // A tenth of a degree short of saturation it is some tens of metres higher, and a tenth or two warmer.
        var near = Of(Falling, shift, -0.1)!.Value;
        Assert.InRange(near.Height.Metres, 1, 60);
        Assert.Equal(ccl.ConvectiveTemperature.Celsius, near.ConvectiveTemperature.Celsius, tolerance: 0.35);
    }

    /// <summary>From 0.1 °C short of saturation on it is the lowest crossing, whatever lies above.</summary>
    [Fact]
    public void Unsaturated_ground_takes_the_lowest_crossing()
    {
        (double, double)[] thin = [(1000, 10), (995, 9.5), (965, 14), (925, 12), (850, 7), (800, 3.5), (700, -4), (600, -12), (500, -21)];
        Assert.InRange(Of(thin, 0, -0.2)!.Value.Height.Metres, 1, 45);
    }

    [Fact]
    public void The_freezing_level_is_where_it_freezes_for_good()
    {
        // Frost on the ground, warm air over it, 0 °C aloft once more between 850 and 800 hPa.
        var analysis = SoundingAnalysis.Of(Ascent(Inversion, -5 - 6, 0));
        Assert.Equal(2, analysis.FreezingLevels.Length);
        Assert.Equal(analysis.FreezingLevels[1], analysis.FreezingLevel);
        Assert.Equal(0, SoundingAnalysis.Of(Ascent(Falling, -20, 0)).FreezingLevel!.Value.Metres);
        Assert.Null(SoundingAnalysis.Of(Ascent(Falling, 30, 0)).FreezingLevel);
    }

    private static ConvectiveCondensation? Of((double Hpa, double Celsius)[] shape, double shift, double dewPoint) =>
        SoundingAnalysis.Of(Ascent(shape, shift, dewPoint)).ConvectiveCondensation;

    // Only the ground changes its dew point; the air above is 4 °C from saturation.
    private static Sounding Ascent((double Hpa, double Celsius)[] shape, double shift, double dewPoint) => SoundingReader.Read(new TypedSounding
    {
        Levels =
        [
            .. shape.Select((level, i) => new TypedLevel
            {
                PressureHpa = level.Hpa,
                TemperatureC = level.Celsius + shift,
                DewPointC = level.Celsius + shift + (i == 0 ? dewPoint : -4),
            }),
        ],
    });
}
