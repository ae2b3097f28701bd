namespace DayBrief.Days;

/// <summary>Which hazards a day gives cause for, the worst first. None without a cause.</summary>
/// <remarks>Thresholds that have a public source name it; the others are common practice, no source: docs/cautions.md has all
/// of them. Limits of the site and of the pilot come before all of them.</remarks>
public static class Hazards
{
    /// <summary>The hazards of a day, the worst first.</summary>
    public static IReadOnlyList<Hazard> Of(Brief brief) => [.. Ranked(brief).All.SelectMany(caution => caution.Hazards)];

    /// <summary>The same by kind, in order of harm times chance.</summary>
    public static RankedCautions Ranked(Brief brief)
    {
        var winds = GroundWind.Of(brief);
        IEnumerable<Hazard?> all =
        [
            .. StormHazards.Of(brief),
            .. CloudHazards.Of(brief),
            .. WindHazards.Of(brief, winds),
            .. CrosswindByHour.Of(brief, winds),
            .. ThermalHazards.Of(brief),
            .. HeightHazards.Of(brief),
            .. GroundHazards.Of(brief),
        ];
        return RankedCautions.Of(all.OfType<Hazard>());
    }
}
