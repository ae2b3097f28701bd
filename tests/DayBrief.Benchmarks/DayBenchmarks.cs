using BenchmarkDotNet.Attributes;
using DayBrief.Days;
using DayBrief.Soundings;
using DayBrief.Units;

namespace DayBrief.Benchmarks;

/// <summary>One deterministic day of a 100-level ascent (asked for: 2 ms on one core) and its ensemble of 500 (0.5 s on two).</summary>
[MemoryDiagnoser]
[ShortRunJob]
public class DayBenchmarks
{
    private static readonly DateOnly Date = new(2026, 6, 21);

    private readonly Site _site = new()
    {
        Position = Position.FromDegrees(47.3, 8.5),
        Elevation = Altitude.FromMetres(400),
        TimeZone = TimeZoneInfo.Utc,
    };

    private readonly Sounding _sounding = new()
    {
        Source = new()
        {
            Format = "invented",
            Elevation = Altitude.FromMetres(400),
            ValidAt = new DateTimeOffset(2026, 6, 21, 3, 0, 0, TimeSpan.Zero),
        },
        Levels = [.. Enumerable.Range(0, 100).Select(Level)],
    };

    /// <summary>The energy balance alone.</summary>
    [Benchmark(Baseline = true)]
    public ConvectiveDay Day() => ConvectiveDay.Compute(_sounding, _site, Date, new() { EnsembleSize = 0 });

    /// <summary>Scaled to a forecast maximum.</summary>
    [Benchmark]
    public ConvectiveDay DayWithMaximum() =>
        ConvectiveDay.Compute(_sounding, _site, Date, new() { MaxTemperature = Temperature.FromCelsius(26), EnsembleSize = 0 });

    /// <summary>500 members, each scaled to its own maximum.</summary>
    [Benchmark]
    public ConvectiveDay EnsembleOf500() =>
        ConvectiveDay.Compute(_sounding, _site, Date, new() { MaxTemperature = Temperature.FromCelsius(26), EnsembleSize = 500 });

    /// <summary>A night inversion of 5 K, 7 K/km above, drying upwards, west wind.</summary>
    private static SoundingLevel Level(int i)
    {
        var height = i * 100.0;
        var celsius = height < 300 ? 12 + (height / 60) : 17 - ((height - 300) * 0.007);
        return new()
        {
            Pressure = Pressure.FromHectopascals(965 * Math.Exp(-height / 8200)),
            Temperature = Temperature.FromCelsius(celsius),
            DewPoint = Temperature.FromCelsius(Math.Min(celsius, 10 - (height * 0.006))),
            Wind = Wind.From(270, Speed.FromMetresPerSecond(3 + (height / 600))),
        };
    }
}
