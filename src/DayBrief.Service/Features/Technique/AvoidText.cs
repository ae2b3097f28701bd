using DayBrief.Flight.Centring;

namespace DayBrief.Service.Features.Technique;

/// <summary>What not to do today and what it costs, each line with its computed price.</summary>
internal static class AvoidText
{
    /// <summary>Less than this is not worth a line, m/s of climb.</summary>
    private const double WorthSayingMs = 0.05;

    public static IEnumerable<string> Of(CentringResult study, Measures m)
    {
        var best = study.Ranking[0];
        if (study.Ranking.FirstOrDefault(way => way.Way == CentringWay.Reverse) is { } reverse && reverse.BehindBestMs.Mean > WorthSayingMs)
            yield return $"Reversing the turn: {m.Vertical(reverse.BehindBestMs.Mean)} behind the best over three minutes; {Measures.N(reverse.LostPct.Mean)} of 100 lose the thermal against {Measures.N(best.LostPct.Mean)}.";
        foreach (var cost in study.EntryCosts.Where(cost => cost.CentredClimbLostMs > WorthSayingMs || cost.Climb3MinLostMs.Mean > WorthSayingMs))
            yield return Cost(cost, m);
        var recommended = study.Ranking.First(way => way.Way == study.Recommended);
        foreach (var error in recommended.Errors.Where(error => error.ClimbLostMs.Mean - error.ClimbLostMs.HalfWidth95 > WorthSayingMs / 2))
            yield return $"{Name(error.Error)}: costs {m.Vertical(error.ClimbLostMs.Mean)}.";
    }

    private static string Cost(EntryCost cost, Measures m)
    {
        var what = cost.What switch
        {
            "+5 kt" => "5 kt too fast",
            "+10 kt" => "10 kt too fast",
            "+5°" => "5° too much bank",
            "-5°" => "5° too little bank",
            _ => "A slow roll",
        };
        var circle = Math.Abs(cost.RadiusGrowthM) >= 1
            ? $" the circle {(cost.RadiusGrowthM > 0 ? "grows" : "shrinks")} by {m.Length(Math.Abs(cost.RadiusGrowthM))},"
            : "";
        return $"{what}:{circle} {m.Vertical(Math.Max(0, Math.Max(cost.CentredClimbLostMs, cost.Climb3MinLostMs.Mean)))} of climb lost.";
    }

    private static string Name(PilotError error) => error switch
    {
        PilotError.FastEntry => "Arriving too fast",
        PilotError.Late => "Starting every turn late",
        PilotError.ChasingTheNeedle => "Chasing the needle",
        PilotError.SloppyRoll => "Rolling sloppily",
        _ => error.ToString(),
    };
}
