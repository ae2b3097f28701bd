using DayBrief.Days;
using DayBrief.Flight.Centring;

namespace DayBrief.Service.Features.Technique;

/// <summary>The day's advice in one line that can be carried into the air; the look-out stands in it whatever the way, the group and the room.</summary>
internal static class CarryText
{
    public static string Of(TechniqueFacts facts) => Of(facts.Study, facts.Pilot.Experience, facts.Measures);

    public static string Of(CentringResult study, Experience experience, Measures say) =>
        string.Join(" – ", Steps(study.Ranking.First(way => way.Way == study.Recommended), study, experience, say));

    private static IEnumerable<string> Steps(WayResult way, CentringResult study, Experience experience, Measures say)
    {
        var lookOut = say["look out"];
        if (experience == Experience.BeforeSolo)
            return [say["with your instructor"], lookOut, say["feel it rise"], say["turn in together"], lookOut, say["say where it was strongest"]];
        return way.Way switch
        {
            CentringWay.StraightenAndShift => Shift(way, study, say),
            CentringWay.TightenAndEase => Tighten(way, study, say),
            CentringWay.BySwing => Shift(way, study, say),
            CentringWay.TurnOnSurge when way.Parameters.TryGetValue("afterSurgeS", out var seconds) =>
                [lookOut, say["it lifts"], Count(seconds, say), say["turn in"], lookOut, say["hold the circle"]],
            _ => [lookOut, say["the lift stops rising"], say["turn in"], lookOut, say["hold the circle"]],
        };
    }

    private static IEnumerable<string> Shift(WayResult way, CentringResult study, Measures say)
    {
        yield return say["look out"];
        yield return say["weakest reading"];
        yield return Count(WaitS(way, study), say);
        yield return say["wings level"];
        var level = way.Parameters.GetValueOrDefault("levelS");
        if (way.Way == CentringWay.BySwing)
            yield return say["as long as the swing asks"];
        else if (Math.Round(level) >= 1)
            yield return Count(level, say);
        yield return say["look out"];
        yield return say["back in"];
    }

    private static IEnumerable<string> Tighten(WayResult way, CentringResult study, Measures say)
    {
        yield return say["look out"];
        yield return say["strongest reading"];
        if (way.Parameters["afterBestReadingDeg"] is var degrees && Math.Round(degrees / study.Circle.RateDegS) >= 1)
            yield return Count(degrees / study.Circle.RateDegS, say);
        yield return say.Say($"steeper, {WayText.TightTo(study, way.Parameters["tightenDeg"], say)}");
        yield return say.Say($"{way.Parameters["holdDeg"] / 360:0.##} of a turn");
        yield return say["look out"];
        yield return say["flatter again"];
    }

    /// <summary>Seconds from the weakest reading to the beginning of the roll-out, as they were simulated.</summary>
    internal static double WaitS(WayResult way, CentringResult study) =>
        Math.Max(0, way.Parameters["afterWorstReadingDeg"]) / study.Circle.RateDegS;

    private static string Count(double seconds, Measures say) => Math.Round(seconds) >= 1 ? say.Say($"count {Math.Round(seconds):0}") : say["at once"];
}
