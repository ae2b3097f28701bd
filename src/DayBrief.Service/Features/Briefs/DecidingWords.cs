using DayBrief.Days;

namespace DayBrief.Service.Features.Briefs;

/// <summary>What decides a day besides its thermals, in a few words each: the clauses of its sentence.</summary>
internal static class DecidingWords
{
    /// <summary>Chance of no usable thermal from which the sentence says it. Common practice, no source.</summary>
    private const double NoneFrom = 0.195;

    /// <summary>More would no longer be one sentence; the cautions under it have all.</summary>
    public const int Most = 5;

    /// <summary>What can decide, in the order in which the sentence says it.</summary>
    private static readonly HazardKind[] Kinds =
    [
        HazardKind.Thunder, HazardKind.FunnelCloud, HazardKind.Squall, HazardKind.Cumulonimbus, HazardKind.FreezingPrecipitation, HazardKind.WindAloft,
        HazardKind.GustOverLimit, HazardKind.WindOverLimit, HazardKind.Hail, HazardKind.Overdevelopment, HazardKind.Showers, HazardKind.SpreadOut,
        HazardKind.Crosswind, HazardKind.VisibilityBelowLeast, HazardKind.CeilingBelowLeast, HazardKind.ThunderInStore,
    ];

    /// <summary>Kinds that decide even where nobody has to be down before them.</summary>
    private static readonly HazardKind[] Always = [HazardKind.WindAloft, HazardKind.Overdevelopment, HazardKind.Showers, HazardKind.SpreadOut];

    public static IEnumerable<string> Of(Brief brief, Reader reader)
    {
        var thermals = brief.Day.Steps.Any(step => step.UsableTopAglM is not null);
        var deciding = Hazards.Ranked(brief).All
            .Where(caution => caution.IsSerious || Always.Contains(caution.Kind))
            .Where(caution => thermals || caution.Kind != HazardKind.WindAloft)
            .ToArray();
        var kinds = deciding.Select(caution => caution.Kind).ToArray();
        var said = deciding
            .Where(caution => Array.IndexOf(Kinds, caution.Kind) >= 0 && !Told(caution.Kind, kinds))
            .OrderBy(caution => Array.IndexOf(Kinds, caution.Kind))
            .Select(caution => Clause(brief, caution, reader)).OfType<string>();
        var none = brief.Day is { MaxUsableTop: not null, NoUsableThermalProbability: >= NoneFrom and { } chance }
            ? new[] { reader.Say($"a chance of {Math.Round(100 * chance):0} % that none comes") }
            : [];
        return none.Concat(said).Take(Most);
    }

    /// <summary>Thunder says its cloud and hail too, gusts say the wind, along the runway and across.</summary>
    private static bool Told(HazardKind kind, HazardKind[] others) => kind switch
    {
        HazardKind.Cumulonimbus or HazardKind.Hail => others.Contains(HazardKind.Thunder),
        HazardKind.WindOverLimit => others.Contains(HazardKind.GustOverLimit),
        HazardKind.Crosswind => others.Contains(HazardKind.GustOverLimit) || others.Contains(HazardKind.WindOverLimit),
        _ => false,
    };

    private static string? Clause(Brief brief, RankedCaution caution, Reader reader)
    {
        var (hazard, time) = (caution.Lead, CautionLine.Of(caution, reader).Time);
        // A time before the thermals, told after theirs, reads as a mistake.
        if (caution.Kind == HazardKind.Overdevelopment && hazard.Source is null && hazard.From < brief.Day.Times.FirstUsable)
            time = reader["from the first thermal on"];
        return caution.Kind switch
        {
            HazardKind.Thunder => reader.Say($"thunder {time}"),
            HazardKind.ThunderInStore => reader["thunder in store [clause]"],
            HazardKind.Cumulonimbus => reader.Say($"cumulonimbus {time}"),
            HazardKind.Squall => reader.Say($"squalls {time}"),
            HazardKind.FunnelCloud => reader.Say($"funnel cloud {time}"),
            HazardKind.Hail => reader.Say($"hail {time}"),
            HazardKind.FreezingPrecipitation => reader.Say($"freezing rain {time}"),
            HazardKind.WindAloft => reader.Say($"hardly usable in {HazardText.Wind(hazard, reader)} of wind"),
            HazardKind.WindOverLimit => reader.Say($"wind to {HazardText.Wind(hazard, reader)} {time}"),
            HazardKind.GustOverLimit => reader.Say($"gusts to {HazardText.Wind(hazard, reader)} {time}"),
            HazardKind.Crosswind => reader.Say($"crosswind to {HazardText.Wind(hazard, reader)} {time}"),
            HazardKind.VisibilityBelowLeast => reader.Say($"visibility {HazardText.Sight(hazard.Value!.Value, reader)} {time}"),
            HazardKind.CeilingBelowLeast => reader.Say($"low cloud {time}"),
            HazardKind.Overdevelopment => reader.Say($"clouds too tall {time}"),
            HazardKind.Showers => reader.Say($"showers {time}"),
            HazardKind.SpreadOut => reader["cumulus spreads out and takes the sun away"],
            _ => null,
        };
    }
}
