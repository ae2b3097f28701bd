using DayBrief.Soundings.Formats.Typed;

namespace DayBrief.Soundings.Quality;

/// <summary>Invented ascents of 5,000 levels with noise of a tenth of a degree and features of known size.</summary>
public sealed class ThinningTests
{
    private const int Levels = 5000;

    [Fact]
    public void No_temperature_moves_by_more_than_a_tenth_of_a_degree()
    {
        var full = Typed(seed: 7);
        var thinned = SoundingReader.Read(full);
        Assert.Contains(thinned.Remarks, remark => remark.Code == "thinned");
        Assert.InRange(thinned.Levels.Length, 20, Levels / 10);
        var next = 1;
        foreach (var level in full.Levels)
        {
            while (thinned.Levels[next].Pressure.Hectopascals > level.PressureHpa + 1e-9)
            {
                next++;
            }

            var (below, above) = (thinned.Levels[next - 1], thinned.Levels[next]);
            var share = Math.Log(below.Pressure.Hectopascals / level.PressureHpa!.Value) / Math.Log(below.Pressure.Pascals / above.Pressure.Pascals);
            Assert.InRange(Between(below.Temperature!.Value.Celsius, above.Temperature!.Value.Celsius, share) - level.TemperatureC!.Value, -0.1000001, 0.1000001);
            Assert.InRange(Between(below.DewPoint!.Value.Celsius, above.DewPoint!.Value.Celsius, share) - level.DewPointC!.Value, -0.5000001, 0.5000001);
        }
    }

    /// <summary>A spike of 0.3 °C on one level only, on an otherwise straight line.</summary>
    [Fact]
    public void A_feature_of_more_than_a_fifth_of_a_degree_stays()
    {
        var full = Typed(seed: null);
        var levels = full.Levels.ToArray();
        levels[2345] = levels[2345] with { TemperatureC = levels[2345].TemperatureC + 0.3 };
        var thinned = SoundingReader.Read(full with { Levels = levels });
        Assert.Contains(thinned.Levels, level => Math.Abs(level.Pressure.Hectopascals - levels[2345].PressureHpa!.Value) < 1e-9);
        Assert.True(thinned.Levels.Length < 100);
    }

    [Fact]
    public void Wind_that_begins_or_ends_stays()
    {
        var full = Typed(seed: null);
        var levels = full.Levels.Select((level, i) => i is >= 1000 and < 1100 ? level with { WindDirectionDeg = 270, WindSpeedMs = 10 } : level).ToArray();
        var thinned = SoundingReader.Read(full with { Levels = levels });
        var winds = thinned.Levels.Where(level => level.Wind is not null).Select(level => level.Pressure.Hectopascals).ToArray();
        Assert.Equal(levels[1000].PressureHpa!.Value, winds[0], tolerance: 1e-9);
        Assert.Equal(levels[1099].PressureHpa!.Value, winds[^1], tolerance: 1e-9);
    }

    [Fact]
    public void Two_thousand_levels_stay_as_they_are()
    {
        var full = Typed(seed: 7);
        Assert.Equal(2000, SoundingReader.Read(full with { Levels = [.. full.Levels.Take(2000)] }).Levels.Length);
    }

    private static double Between(double below, double above, double share) => below + (share * (above - below));

    // 1000 to 100 hPa in equal steps of the logarithm, −6.5 °C/km roughly, waves, an inversion, and noise.
    private static TypedSounding Typed(int? seed)
    {
        var random = new Random(seed ?? 0);
        return new()
        {
            Levels =
            [
                .. Enumerable.Range(0, Levels).Select(i =>
                {
                    var height = 16.0 * i / Levels;
                    var celsius = seed is null ? 15 - (6 * height) : 15 - (6 * height) + Math.Sin(3 * height) + (2 * Math.Tanh(10 * (height - 2))) + (0.05 * random.NextDouble());
                    return new TypedLevel
                    {
                        PressureHpa = 1000 * Math.Exp(-Math.Log(10) * i / Levels),
                        TemperatureC = celsius,
                        DewPointC = celsius - 5 - (seed is null ? 0 : 2 * Math.Cos(2 * height)),
                    };
                }),
            ],
        };
    }
}
