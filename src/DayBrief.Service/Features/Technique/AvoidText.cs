using DayBrief.Flight.Centring;

namespace DayBrief.Service.Features.Technique;

/// <summary>What not to do today and what it costs, each line with its computed price.</summary>
internal static class AvoidText
{
    /// <summary>Less than this is not worth a line, m/s of climb.</summary>
    private const double WorthSayingMs = 0.05;

    public static IEnumerable<string> Of(CentringResult study, Measures say)
    {
        var best = study.Ranking[0];
        if (study.Ranking.FirstOrDefault(way => way.Way == CentringWay.Reverse) is { } reverse && reverse.BehindBestMs.Mean > WorthSayingMs)
            yield return say.Say($"Reversing the turn: {say.Vertical(reverse.BehindBestMs.Mean)} behind the best over three minutes; {reverse.LostPct.Mean:0} of 100 lose the thermal against {best.LostPct.Mean:0}.");
        foreach (var cost in study.EntryCosts.Where(cost => cost.CentredClimbLostMs > WorthSayingMs || cost.Climb3MinLostMs.Mean > WorthSayingMs))
            yield return Cost(cost, say);
        var recommended = study.Ranking.First(way => way.Way == study.Recommended);
        foreach (var error in recommended.Errors.Where(error => error.ClimbLostMs.Mean - error.ClimbLostMs.HalfWidth95 > WorthSayingMs / 2))
            yield return say.Say($"{Name(error.Error, say)}: costs {say.Vertical(error.ClimbLostMs.Mean)}.");
    }

    private static string Cost(EntryCost cost, Measures say)
    {
        var what = cost.What switch
        {
            "+5 kt" => say["5 kt too fast"],
            "+10 kt" => say["10 kt too fast"],
            "+5°" => say["5° too much bank"],
            "-5°" => say["5° too little bank"],
            _ => say["A slow roll"],
        };
        var lost = say.Vertical(Math.Max(0, Math.Max(cost.CentredClimbLostMs, cost.Climb3MinLostMs.Mean)));
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
