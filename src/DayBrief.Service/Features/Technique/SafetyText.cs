using DayBrief.Days;
using DayBrief.Flight.Centring;
using DayBrief.Flight.Gliders;
using DayBrief.Units;

namespace DayBrief.Service.Features.Technique;

/// <summary>What holds for every group before any advice on circling: look-out, joining, the rule against reversing, how low, how
/// steep, how near the stall.</summary>
/// <remarks>Joining: [FAA-13A] ch. 10. The rest is common practice, no source.</remarks>
internal static class SafetyText
{
    public static IEnumerable<string> Of(TechniqueView view)
    {
        var (say, rule) = (view.Say, view.Group.Rule);
        yield return say["Look out before every turn and all the way round it: eyes outside, the variometer only in passing."];
        yield return say["Joining others: turn the way they turn, come in from outside and at circling speed, opposite to whoever is at your height; never pull up inside, never straight above or below. Out of sight: leave at once."];
        yield return view.Facts is { Study: var study, Measures: var priced } ? NeverReverse(study, priced) : say["Never reverse the turn, least of all towards another glider."];
        var least = say.AtLeast(rule.LeastHeight.Metres);
        yield return rule.LeastHeightSet
            ? say.Say($"Nobody of your group circles below {least} above the field. Lower than that: circuit and landing.")
            : say.Say($"Nobody of your group circles below {least} above the field (common practice; the site has set no limit). Lower than that: circuit and landing.");
        yield return Steepest(view.Glider, rule, say);
    }

    /// <summary>A rule whatever it costs; with today's price where the study finds one.</summary>
    private static string NeverReverse(CentringResult study, Measures say)
    {
        var reverse = study.Ranking.FirstOrDefault(way => way.Way == CentringWay.Reverse);
        var given = study.Ranking.First(way => way.Way == study.Recommended);
        var behind = reverse is null ? 0 : given.Climb3MinMs.Mean - reverse.Climb3MinMs.Mean;
        return reverse is not null && behind > AvoidText.WorthSayingMs
            ? say.Say($"Never reverse the turn, least of all towards another glider. Today it also costs {say.Climb(behind)} over three minutes, and {reverse.LostPct.Mean:0} of 100 lose the thermal against {given.LostPct.Mean:0}.")
            : say["Never reverse the turn, least of all towards another glider."];
    }

    private static string Steepest(Glider glider, CirclingRule rule, Measures say)
    {
        var (bank, limits) = (Math.Floor(rule.SteepestBankDegrees), rule.Circles);
        var high = say.Circle(limits.SlowestAt(glider, bank, rule.LowBelow));
        var low = say.Circle(limits.SlowestAt(glider, bank, Height.FromMetres(0)));
        var below = say.AtLeast(rule.LowBelow.Metres);
        return rule.SteepestBankSet
            ? say.Say($"Steepest for your group: {high} or more. Low, below {below}, that is {low} or more: {rule.LowMarginPct:0} % above the stall in the turn instead of {CircleLimits.LeastMarginPct:0} %.")
            : say.Say($"Steepest for your group: {high} or more (common practice; the site has set no limit). Low, below {below}, that is {low} or more: {rule.LowMarginPct:0} % above the stall in the turn instead of {CircleLimits.LeastMarginPct:0} %.");
    }
}
