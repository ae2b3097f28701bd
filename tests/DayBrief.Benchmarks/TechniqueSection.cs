using BenchmarkDotNet.Attributes;
using DayBrief.Flight.Centring;
using DayBrief.Flight.Gliders;
using DayBrief.Flight.Instruments;
using DayBrief.Flight.Thermals;
using DayBrief.Units;

namespace DayBrief.Benchmarks;

/// <summary>A brief's whole technique section: all five classes in one thermal, with errors and entry costs, on two threads.</summary>
public class TechniqueSection
{
    private static readonly Thermal Thermal =
        new(Speed.FromMetresPerSecond(2.5), 120, Height.FromMetres(1500), Height.FromMetres(600));

    private static readonly Glider[] Gliders = [.. Enum.GetValues<GliderClass>().Select(GenericGlider.Of)];

    [Benchmark]
    public IReadOnlyList<CentringResult> AllClasses() =>
        CentringStudy.RunAll(Thermal, Gliders, Variometer.Usual, new() { Threads = 2 });
}
