using DayBrief.Flight.Centring;

namespace DayBrief.Service.Features.Technique;

/// <summary>What is the same as on most days, and what today's air asks for beside it.</summary>
/// <remarks>Wind, width and depth from which it is said: common practice, no source.</remarks>
internal static class TodayText
{
    private const double WindyMs = 10;
    private const double TornMsPerKm = 5;
    private const double CappedM = 900;

    public static IEnumerable<string> Of(TechniqueFacts facts)
    {
        var (study, say, wind) = (facts.Study, facts.Measures, facts.Brief.Day.Wind);
        if (study.Recommended == CentringWay.StraightenAndShift)
            yield return say["As on most days: one short straight stretch after the weakest; only the seconds are today's."];
        if (wind is { Mean.Speed.MetresPerSecond: >= WindyMs })
            yield return say["Strong wind: when in doubt correct upwind; a circle that falls out of the lift falls out downwind."];
        if (Math.Abs(facts.Thermal.WindShearMsPerKm) >= TornMsPerKm)
            yield return say["The wind changes much with height: the lift is torn. Search a few seconds, then leave."];
        if (facts.Thermal.RadiusM < 2 * study.Circle.RadiusM)
            yield return say["Narrow today: corrections no longer than said, or you are out of it."];
        if (facts.At.UsableTopAglM is { } top && top < CappedM)
            yield return say["Capped low: few turns to the top. A correction in the first two turns, none in the last."];
    }
}
