using DayBrief.Flight.Centring.Kernel;

namespace DayBrief.Flight.Centring;

/// <summary>Flies a set of encounters on several threads; the outcome depends on the set and the flying alone.</summary>
internal sealed class EncounterFlight(EncounterSet set, Column column, int threads)
{
    private const int Chunk = 8 * EncounterSet.Block;

    public int Count => set.Count;

    public EncounterSet Set => set;

    public Outcomes Fly(Flying flying, EncounterKernel.Clock clock, int traced = 0)
    {
        var outcomes = new Outcomes(set.Count, traced);
        var chunks = (set.Count + Chunk - 1) / Chunk;
        Parallel.For(0, chunks, new ParallelOptions { MaxDegreeOfParallelism = threads }, chunk =>
            EncounterKernel.FlyWide(set, in column, flying, clock, outcomes, chunk * Chunk, Math.Min(set.Count, (chunk + 1) * Chunk)));
        return outcomes;
    }
}
