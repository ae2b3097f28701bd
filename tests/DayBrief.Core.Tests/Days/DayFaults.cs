using DayBrief.Units;

namespace DayBrief.Days;

/// <summary>What must never happen on a computed day, counted.</summary>
/// <param name="Id">The morning.</param>
/// <param name="Jumps">Usable top by more than 250 m in five minutes.</param>
/// <param name="Drops">Screen temperature down by 0.5 K or more in five minutes of heating.</param>
/// <param name="Contradicts">No usable climb beside a median of the ensemble that is one, or the reverse.</param>
/// <param name="CumulusOutOfReach">Cumulus with its base above 1.2 depths of the layer.</param>
internal sealed record DayFault(string Id, int Jumps, int Drops, bool Contradicts, bool CumulusOutOfReach);

/// <summary>The faults of all given mornings with three inputs each.</summary>
internal static class DayFaults
{
    public static Lazy<IReadOnlyList<DayFault>> All { get; } = new(() =>
    [
        .. Cases.Pairs.Value.AsParallel().AsOrdered().SelectMany(pair => new[]
        {
            Of(pair.Id, pair.Day),
            Of(pair.Id, pair.Free),
            Of(pair.Id, pair.Inputs.Compute(pair.Inputs.Given with { MaxTemperature = Warmer(pair.Inputs.Given.MaxTemperature!.Value) })),
        }),
    ]);

    public static DayFault Of(string id, ConvectiveDay day)
    {
        var steps = day.Steps.Zip(day.Steps.Skip(1)).ToArray();
        return new(
            id,
            steps.Count(pair => Math.Abs((pair.Second.UsableTopAglM - pair.First.UsableTopAglM) ?? 0) > 250),
            steps.Count(pair => pair.First.SensibleHeatWm2 > 0 && pair.Second.SurfaceTemperatureC - pair.First.SurfaceTemperatureC <= -0.5),
            day.Ranges is { } ranges && (ranges.MaxClimbMs.P50 is null) != (day.MaxClimb is null),
            day.Steps.Any(step => step.CloudBaseAglM > 1.2 * step.MixedLayerDepthM));
    }

    private static Temperature Warmer(Temperature given) => given + TemperatureDifference.FromKelvins(2);
}
