using DayBrief.Flight.Centring.Kernel;
using DayBrief.Flight.Thermals;
using DayBrief.Numerics;

namespace DayBrief.Flight.Centring;

/// <summary>The three sets of encounters of a study in one thermal; gliders and instruments share them.</summary>
internal sealed class EncounterFlights(Thermal thermal, int judged, long seed, int threads)
{
    private const int Chosen = 192;
    private const int Erred = 256;

    /// <summary>Five minutes, five steps a second: halving the step changes a mean climb of 1 m/s or more by less than 1 %.</summary>
    public static readonly EncounterKernel.Clock Full = new(EncounterSet.Seconds, 5);

    /// <summary>Three minutes in the same steps.</summary>
    public static readonly EncounterKernel.Clock Short = new(180, 5);

    private readonly Column _column = new(thermal);

    public long Seed => seed;

    public int Count => Judging.Count;

    /// <summary>Encounters that judge the ways.</summary>
    public EncounterFlight Judging => field ??= Make(0, judged);

    /// <summary>Encounters in which a way's numbers are chosen.</summary>
    public EncounterFlight Choosing => field ??= Make(1, Chosen);

    /// <summary>Encounters in which errors are costed.</summary>
    public EncounterFlight Erring => field ??= Make(2, Erred);

    private EncounterFlight Make(int stream, int count) =>
        new(EncounterSet.Create(thermal, CounterRandom.FromSeed(seed).Stream(stream), count, threads), _column, threads);
}
