using BenchmarkDotNet.Attributes;
using DayBrief.Flight.Centring;
using DayBrief.Flight.Centring.Kernel;
using DayBrief.Flight.Gliders;
using DayBrief.Flight.Instruments;
using DayBrief.Flight.Thermals;
using DayBrief.Numerics;
using DayBrief.Numerics.Lanes;
using DayBrief.Units;

namespace DayBrief.Benchmarks;

/// <summary>The circling kernel on one core: 512 encounters of 300 s in 5 steps a second, 768 000 encounter-steps an operation.</summary>
public class EncounterSteps
{
    private const int Encounters = 512;
    private const int Steps = Encounters * EncounterSet.Seconds * 5;

    private Column _column;
    private EncounterSet _set = null!;
    private Flying _flying = null!;
    private Outcomes _outcomes = null!;

    [Params(CentringWay.Hold, CentringWay.BySwing)]
    public CentringWay Way { get; set; }

    [GlobalSetup]
    public void Prepare()
    {
        var thermal = new Thermal(Speed.FromMetresPerSecond(2.5), 120, Height.FromMetres(1500), Height.FromMetres(600));
        var circle = Circle.At(GenericGlider.Of(GliderClass.Standard), 38, Speed.FromKnots(48));
        var swing = SwingTable.For(thermal, circle, Variometer.Usual);
        _flying = new Briefing(thermal, circle, Variometer.Usual, swing).Fly(Way, new());
        _column = new(thermal);
        _set = EncounterSet.Create(thermal, CounterRandom.FromSeed(1), Encounters);
        _outcomes = new(Encounters);
    }

    [Benchmark(Baseline = true, OperationsPerInvoke = Steps)]
    public void Scalar() => EncounterKernel.Fly(_set, in _column, _flying, EncounterFlights.Full, _outcomes, 0, Encounters);

    [Benchmark(OperationsPerInvoke = Steps)]
    public void EightWide() => EncounterKernel.Run<Lane8>(_set, in _column, _flying, EncounterFlights.Full, _outcomes, 0, Encounters);

    [Benchmark(OperationsPerInvoke = Steps)]
    public void SixteenWide() => EncounterKernel.Run<Lane16>(_set, in _column, _flying, EncounterFlights.Full, _outcomes, 0, Encounters);
}
