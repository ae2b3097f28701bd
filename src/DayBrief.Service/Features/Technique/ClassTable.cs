using DayBrief.Flight.Centring;

namespace DayBrief.Service.Features.Technique;

/// <summary>The mixed group on one look: the five classes with what each flies today, within the limits of the group.</summary>
internal static class ClassTable
{
    public static IReadOnlyList<string> Head(Measures say) =>
        [say["Glider"], say["Circle"], say["A turn"], say["Roll out after"], say.Say($"{say.Faster(5)} too fast costs")];

    public static IEnumerable<IReadOnlyList<string>> Rows(TechniqueFacts facts)
    {
        var say = facts.Measures;
        for (var i = 0; i < facts.Classes.Count; i++)
        {
            var (name, study) = (GliderText.Name(TechniqueDesk.Classes[i], say.Language), facts.Classes[i]);
            yield return study.CentredClimbMs <= 0
                ? [name, "–", "–", "–", say["no circle climbs"]]
                :
                [
                    name,
                    say.Circle(study.Circle),
                    say.Say($"{study.Circle.PeriodS:0} s"),
                    say.Say($"{RollOutS(study):0} s"),
                    say.Climb(TooFastMs(study)),
                ];
        }
    }

    /// <summary>Seconds from the weakest reading to the roll-out that was simulated.</summary>
    internal static double RollOutS(CentringResult study) => Math.Max(0, study.SimulatedRollOut.AfterWorstReadingS);

    /// <summary>Climb lost in the centred circle at the same bank 5 kt faster, m/s.</summary>
    internal static double TooFastMs(CentringResult study) =>
        study.EntryCosts.FirstOrDefault(cost => cost.What == "+5 kt") is { } cost ? Math.Max(0, cost.CentredClimbLostMs) : 0;
}
