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

    /// <summary>What the analysis tells is that of all levels: 0.1 hPa and 0.02 °C are what a coded ascent rounds to.</summary>
    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(3)]
    [InlineData(4)]
    [InlineData(5)]
    [InlineData(6)]
    public void The_analysis_of_the_thinned_ascent_is_that_of_the_full_one(int seed)
    {
        var full = Typed(seed);
        var thinned = SoundingReader.Read(full);
        Assert.Contains(thinned.Remarks, remark => remark.Code == "thinned");
        Same(Full(full), thinned);
    }

    /// <summary>Real ascents, made dense by their own straight lines and noise of a hundredth of a degree.</summary>
    [Theory]
    [MemberData(nameof(ReferenceAscent.Ids), MemberType = typeof(ReferenceAscent))]
    public void The_analysis_of_a_dense_real_ascent_stays(string id)
    {
        var random = new Random(5);
        var sounding = ReferenceAscent.Load(id).Sounding;
        var levels = sounding.Levels.Where(level => level is { Temperature: not null, DewPoint: not null }).ToArray();
        var each = 1 + (2400 / levels.Length);
        var dense = new TypedSounding
        {
            Levels =
            [
                .. levels.Zip(levels.Skip(1)).SelectMany(pair => Enumerable.Range(0, each).Select(i =>
                {
                    var share = (double)i / each;
                    var celsius = Between(pair.First.Temperature!.Value.Celsius, pair.Second.Temperature!.Value.Celsius, share) + (0.01 * random.NextDouble());
                    return new TypedLevel
                    {
                        PressureHpa = pair.First.Pressure.Hectopascals * Math.Pow(pair.Second.Pressure.Pascals / pair.First.Pressure.Pascals, share),
                        TemperatureC = celsius,
                        DewPointC = Math.Min(celsius, Between(pair.First.DewPoint!.Value.Celsius, pair.Second.DewPoint!.Value.Celsius, share)),
                    };
                })),
            ],
        };
        var thinned = SoundingReader.Read(dense);
        Assert.True(thinned.Levels.Length < dense.Levels.Count / 2, $"{thinned.Levels.Length} of {dense.Levels.Count}");
        Same(Full(dense), thinned);
    }

    private static void Same(Sounding full, Sounding thinned)
    {
        Units.Temperature[] warmed = [.. new[] { 1, 3, 6, 9, 12, 15.0 }.Select(by => Units.Temperature.FromCelsius(full.Surface.Temperature!.Value.Celsius + by))];
        var (expected, actual) = (SoundingAnalysis.Of(full, warmed), SoundingAnalysis.Of(thinned, warmed));
        Assert.Equal(expected.ConvectiveCondensation is null, actual.ConvectiveCondensation is null);
        if (expected.ConvectiveCondensation is { } condensation)
        {
            Assert.Equal(condensation.Pressure.Hectopascals, actual.ConvectiveCondensation!.Value.Pressure.Hectopascals, tolerance: 0.1);
            Assert.Equal(condensation.ConvectiveTemperature.Celsius, actual.ConvectiveCondensation!.Value.ConvectiveTemperature.Celsius, tolerance: 0.02);
        }

        foreach (var (top, other) in expected.DryTops.Zip(actual.DryTops))
        {
            Assert.Equal(top.Top?.Pressure.Hectopascals ?? 0, other.Top?.Pressure.Hectopascals ?? 0, tolerance: 0.1);
        }

        Assert.Equal(expected.FreezingLevel?.Metres ?? 0, actual.FreezingLevel?.Metres ?? 0, tolerance: 2);
    }

    private static Sounding Full(TypedSounding typed) => new()
    {
        Source = new() { Format = "" },
        Levels =
        [
            .. typed.Levels.Select(level => new SoundingLevel
            {
                Pressure = Units.Pressure.FromHectopascals(level.PressureHpa!.Value),
                Temperature = Units.Temperature.FromCelsius(level.TemperatureC!.Value),
                DewPoint = Units.Temperature.FromCelsius(level.DewPointC!.Value),
            }),
        ],
    };

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
