using DayBrief.Flight.Centring;

namespace DayBrief.Service.Features.Technique;

/// <summary>A way of centring in words, with the day's numbers.</summary>
internal static class WayText
{
    public static string Name(CentringWay way) => way switch
    {
        CentringWay.Hold => "holding the circle",
        CentringWay.TurnOnSurge => "turning on the surge",
        CentringWay.LevelAfter270 => "levelling after 270°",
        CentringWay.StraightenAndShift => "straightening and shifting",
        CentringWay.TightenAndEase => "tightening and easing",
        CentringWay.Reverse => "reversing",
        _ => "choosing by the swing",
    };

    public static string Of(WayResult way, CentringResult study, Measures m)
    {
        var words = way.Way switch
        {
            CentringWay.Hold => "Hold the first circle; no correction pays today.",
            CentringWay.TurnOnSurge => $"Turn {Seconds(way, "afterSurgeS")} after the surge, at once to full bank, and hold that circle.",
            CentringWay.LevelAfter270 => $"If the first half turn is weaker than the entry, level the wings after 270° for {Seconds(way, "levelS")}, then the same turn again.",
            CentringWay.StraightenAndShift => $"{Straighten(way, study)} Then the same turn again.",
            CentringWay.TightenAndEase => Tighten(way),
            CentringWay.Reverse => "Turn the other way when the first turn finds less than the entry.",
            _ => $"By the swing: a large one, straighten: {Lower(Straighten(way, study))} A small one: {Lower(Tighten(way))}",
        };
        var turns = way.TurnsToCentre is { } count ? $" Centred after about {Measures.N(Math.Max(1, count))} turns;" : "";
        return $"{words}{turns} {m.Vertical(way.Climb3MinMs.Mean)} over the first three minutes, and {Measures.N(way.LostPct.Mean)} of 100 lose the thermal.";
    }

    private static string Straighten(WayResult way, CentringResult study)
    {
        var degrees = way.Parameters["afterWorstReadingDeg"];
        var wait = Math.Max(0, degrees) / study.Circle.RateDegS;
        var level = way.Parameters.TryGetValue("levelS", out var seconds) ? $"{Measures.N(seconds, "0.0")} s" : "as long as the swing table says";
        return $"Begin to roll out {Measures.N(wait, "0.0")} s ({Measures.N(Math.Max(0, degrees))}° of turn) after the weakest reading, wings level {level}.";
    }

    private static string Tighten(WayResult way) =>
        $"From the best reading {Measures.N(way.Parameters["tightenDeg"])}° more bank, held through {Measures.N(way.Parameters["holdDeg"])}° of turn, eased over half a turn.";

    private static string Seconds(WayResult way, string name) =>
        way.Parameters.TryGetValue(name, out var seconds) ? $"{Measures.N(seconds, "0.0")} s" : "at once";

    private static string Lower(string text) => char.ToLowerInvariant(text[0]) + text[1..];
}
