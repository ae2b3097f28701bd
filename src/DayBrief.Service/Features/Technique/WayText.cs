using DayBrief.Flight.Centring;

namespace DayBrief.Service.Features.Technique;

/// <summary>A way of centring in words, with the day's numbers.</summary>
internal static class WayText
{
    public static string Name(CentringWay way, Measures say) => way switch
    {
        CentringWay.Hold => say["holding the circle"],
        CentringWay.TurnOnSurge => say["turning on the surge"],
        CentringWay.LevelAfter270 => say["levelling after 270°"],
        CentringWay.StraightenAndShift => say["straightening and shifting"],
        CentringWay.TightenAndEase => say["tightening and easing"],
        CentringWay.Reverse => say["reversing"],
        _ => say["choosing by the swing"],
    };

    public static string Of(WayResult way, CentringResult study, Measures say)
    {
        var words = way.Way switch
        {
            CentringWay.Hold => say["Hold the first circle; no correction pays today."],
            CentringWay.TurnOnSurge => say["At once to full bank, and hold that circle."],
            CentringWay.LevelAfter270 => say.Say($"If the first half turn is weaker than the entry, level the wings after 270° of turn for {Level(way, say)}, then the same turn again."),
            CentringWay.StraightenAndShift => say.Say($"If the reading swings by {Swing(way, "straightensFromMs", say)} or more round the circle: begin to roll out {Straighten(way, study, say)}. Then the same turn again."),
            CentringWay.TightenAndEase => say.Say($"If the reading swings by {Swing(way, "tightensFromMs", say)} or more: {Tighten(way, study, say)}."),
            CentringWay.Reverse => throw new ArgumentOutOfRangeException(nameof(way), way.Way, "Nobody is told to reverse."),
            _ when way.Parameters["tightenDeg"] <= 0 => say.Say($"By the swing: from {Swing(way, "straightensFromMs", say)} on begin to roll out {Straighten(way, study, say)}. Less: hold the circle."),
            _ => say.Say($"By the swing: from {Swing(way, "straightensFromMs", say)} on begin to roll out {Straighten(way, study, say)}. Less, down to {Swing(way, "tightensFromMs", say)}: {Tighten(way, study, say)}."),
        };
        var turns = way.TurnsToCentre is { } count ? Turns(Math.Max(1, count), say) : "";
        return say.Say($"{words}{turns} {say.Climb(way.Climb3MinMs.Mean)} over the first three minutes, and {way.LostPct.Mean:0} of 100 lose the thermal.");
    }

    /// <summary>When to turn in, as it was simulated.</summary>
    public static string Entry(WayResult way, Measures say) => way.Parameters.TryGetValue("afterSurgeS", out var seconds) switch
    {
        true when Math.Round(seconds) < 1 => say["Turn in as soon as you feel the surge, towards the wing that rises."],
        true => say.Say($"Turn in {seconds:0} s after you feel the surge, towards the wing that rises."),
        false => say["Fly on until the lift stops rising, then turn in towards the wing that rose."],
    };

    private static string Turns(double count, Measures say) =>
        say.Language.Say((long)Math.Round(count), $" Centred after about {count:0} turn;", $" Centred after about {count:0} turns;");

    internal static string Level(WayResult way, Measures say) => say.Say($"{way.Parameters["levelS"]:0} s");

    private static string Straighten(WayResult way, CentringResult study, Measures say)
    {
        var degrees = Math.Max(0, way.Parameters["afterWorstReadingDeg"]);
        var wait = degrees / study.Circle.RateDegS;
        return way.Parameters.TryGetValue("levelS", out var seconds) switch
        {
            false => say.Say($"{wait:0.0} s ({degrees:0}° of turn) after the weakest reading, wings level for {100 * way.Parameters["shareOfOffset"]:0} % of the time in the swing table"),
            true when seconds < 0.05 => say.Say($"{wait:0.0} s ({degrees:0}° of turn) after the weakest reading, and roll back at once"),
            true => say.Say($"{wait:0.0} s ({degrees:0}° of turn) after the weakest reading, wings level {seconds:0.0} s"),
        };
    }

    private static string Swing(WayResult way, string from, Measures say) => say.Vertical(way.Parameters[from]);

    /// <summary>Where tightening begins: before, at or after the strongest reading, as it was simulated.</summary>
    private static string Where(double degrees, Measures say) => degrees switch
    {
        > 180 => say.Say($"{360 - degrees:0}° of turn before the strongest reading"),
        0 => say["at the strongest reading"],
        _ => say.Say($"{degrees:0}° of turn after the strongest reading"),
    };

    private static string Tighten(WayResult way, CentringResult study, Measures say) =>
        say.Say($"{Where(way.Parameters["afterBestReadingDeg"], say)} tighten to {TightTo(study, way.Parameters["tightenDeg"], say)}, held through {way.Parameters["holdDeg"]:0}° of turn, eased over half a turn");

    /// <summary>The tighter circle with its speed, which keeps the margin over the stall.</summary>
    internal static string TightTo(CentringResult study, double degrees, Measures say)
    {
        var bank = study.Circle.BankDeg + Math.Ceiling(degrees);
        return say.Circle(bank, study.Circle.SpeedMsAt(bank));
    }
}
