using DayBrief.Flight.Centring;

namespace DayBrief.Service.Features.Technique;

/// <summary>What not to do today and what it costs, each line with its computed price.</summary>
internal static class AvoidText
{
    /// <summary>Less than this is not worth a line, m/s of climb.</summary>
    internal const double WorthSayingMs = 0.05;

    public static IEnumerable<string> Of(CentringResult study, Measures say)
    {
        foreach (var cost in study.EntryCosts.Where(cost => !IsWithinTheFlat(cost, study)).Where(cost => cost.CentredClimbLostMs > WorthSayingMs || cost.Climb3MinLostMs.Mean > WorthSayingMs))
            yield return Cost(cost, say);
        var recommended = study.Ranking.First(way => way.Way == study.Recommended);
        foreach (var error in recommended.Errors.Where(error => error.ClimbLostMs.Mean - error.ClimbLostMs.HalfWidth95 > WorthSayingMs / 2))
            yield return say.Say($"{Name(error.Error, say)}: costs {say.Climb(error.ClimbLostMs.Mean)}.");
    }

    /// <summary>The page says of these banks that they hardly cost anything.</summary>
    private static bool IsWithinTheFlat(EntryCost cost, CentringResult study) =>
        TechniqueText.IsFlat(study) && cost.What switch
        {
            "+5°" => study.Circle.BankDeg + 5 <= study.Optimum.FlatTo.BankDeg,
            "-5°" => study.Circle.BankDeg - 5 >= study.Optimum.FlatFrom.BankDeg,
            _ => false,
        };

    private static string Cost(EntryCost cost, Measures say)
    {
        var what = cost.What switch
        {
            "+5 kt" => say.Say($"{say.Faster(5)} too fast"),
            "+10 kt" => say.Say($"{say.Faster(10)} too fast"),
            "+5°" => say["5° too much bank at the same speed, which is too near the stall"],
            "-5°" => say["5° too little bank"],
            _ => say["A slow roll"],
        };
        var lost = say.Climb(Math.Max(0, Math.Max(cost.CentredClimbLostMs, cost.Climb3MinLostMs.Mean)));
        var change = say.Length(Math.Abs(cost.RadiusGrowthM));
        return cost.RadiusGrowthM switch
        {
            >= 1 => say.Say($"{what}: the circle grows by {change}, {lost} of climb lost."),
            <= -1 => say.Say($"{what}: the circle shrinks by {change}, {lost} of climb lost."),
            _ => say.Say($"{what}: {lost} of climb lost."),
        };
    }

    private static string Name(PilotError error, Measures say) => error switch
    {
        PilotError.FastEntry => say["Arriving too fast"],
        PilotError.Late => say["Starting every turn late"],
        PilotError.ChasingTheNeedle => say["Chasing the needle"],
        _ => say["Rolling sloppily"],
    };
}
