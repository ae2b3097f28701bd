using DayBrief.Days;
using DayBrief.Flight.Centring;
using DayBrief.Flight.Gliders;
using DayBrief.Flight.Thermals;
using DayBrief.Units;

namespace DayBrief.Service.Features.Technique;

/// <summary>Everything the words are made from; the thermal is that of one step of the day, the strongest.</summary>
internal sealed record TechniqueFacts(Brief Brief, DayStep At, Thermal Thermal, CentringResult Study, Glider Glider, Pilot Pilot, Measures Measures, CirclingRule Rule)
{
    /// <summary>The studies of all classes for the pilot's group and variometer, in their order.</summary>
    public IReadOnlyList<CentringResult> Classes { get; init; } = [];
}

/// <summary>Finding it, centring it, holding it, when to leave, what not to do: in words, each line from today's numbers.</summary>
internal static class TechniqueText
{
    public static IEnumerable<string> Find(TechniqueFacts facts)
    {
        var (day, say, thermal) = (facts.Brief.Day, facts.Measures, facts.Thermal);
        var (apartText, radius) = (say.Distance(Spacing.AlongTrackM(thermal.Depth)), say.Length(thermal.RadiusM));
        yield return day.Cloud is { Dry: true, Unknown: false }
            ? say.Say($"One about every {apartText} along your track, {radius} radius; no cloud marks them, so ground, birds and other gliders must.")
            : say.Say($"One about every {apartText} along your track, {radius} radius.");
        if (day.ThermalType.InStreets && day.Wind is { StreetSpacing: { } apart } wind)
            yield return say.Say($"They stand in streets along {wind.Mean.FromDegrees:000}°, {say.Distance(apart.Metres)} apart: fly along a street, cross quickly.");
        if (day.Wind is { Mean: var mean } && mean.Speed.MetresPerSecond > 1)
        {
            yield return day.ThermalType.Leaning
                ? say.Say($"It drifts {say.Distance(600 * mean.Speed.MetresPerSecond)} in ten minutes, bent by the shear: upright at half its height, its foot and its head off that line. From the ground look downwind of the source; from a cloud look below it, low down up to {say.Length(LeanM(thermal, mean))} upwind.")
                : say.Say($"It stands nearly upright and drifts {say.Distance(600 * mean.Speed.MetresPerSecond)} in ten minutes: from the ground look downwind of the source, at any height; from a cloud look straight below it, low down up to {say.Length(LeanM(thermal, mean))} upwind.");
        }

        if (day.ThermalType.Kind == ThermalKind.ShortLived && thermal.Lifetime is { } life)
            yield return say.Say($"At one height it lasts about {life.TotalMinutes:0} min: don't search long, go on quickly when it fades.");
        if (facts.Pilot.Experience == Experience.CrossCountry)
            yield return say.Say($"Expect about {say.Climb(facts.Study.CentredClimbMs)} when centred; set the speed-to-fly ring to what you really average, not to that.");
    }

    /// <summary>How far the foot of the column stands upwind of its head at most: gliders' circles drift with 95 % of the wind at their height,
    /// which leaves an eighth of the lean that a plume from a fixed source would have (docs/technique.md).</summary>
    private static double LeanM(Thermal thermal, Wind mean) =>
        Lean.HeldShare * Lean.DriftM(mean.Speed, thermal.Depth, thermal.CoreUpdraft);

    public static IEnumerable<string> Centre(TechniqueFacts facts)
    {
        var (study, say) = (facts.Study, facts.Measures);
        if (facts.Pilot.Experience == Experience.BeforeSolo)
        {
            yield return say.Say($"With your instructor: a steady {say.Circle(study.Circle)}, look out, feel the surge, and say where it was strongest.");
            yield break;
        }

        var late = study.LagS + study.Instrument.DisplayDelayS;
        yield return say.Say($"In this circle you know of the air {late:0.0} s late, {study.Circle.RateDegS * late:0}° of turn.");
        var given = study.Ranking.First(way => way.Way == study.Recommended);
        yield return WayText.Entry(given, say);
        yield return WayText.Of(given, study, say);
        foreach (var line in TodayText.Of(facts))
            yield return line;
        var others = study.Tied.Where(way => way != study.Recommended).Select(way => WayText.Name(way, say)).ToArray();
        if (others.Length > 0)
            yield return say.Say($"Today {Joined(others, say)} cannot be told from it; the simpler is given.");
        if (study.SimulatedRollOut is var best && study.Recommended is not (CentringWay.StraightenAndShift or CentringWay.BySwing))
            yield return say.Say($"If you straighten: begin {Math.Max(0, best.AfterWorstReadingS):0.0} s after the weakest reading, wings level {best.LevelS:0.0} s.");
        if (study.Recommended != CentringWay.LevelAfter270 && study.Ranking.FirstOrDefault(way => way.Way == CentringWay.LevelAfter270) is { } after270)
            yield return say.Say($"Turned the wrong way? Keep turning, level after 270° of turn for {WayText.Level(after270, say)}, look out, then the same turn again.");
    }

    public static IEnumerable<string> Hold(TechniqueFacts facts)
    {
        var (study, say) = (facts.Study, facts.Measures);
        var circle = study.Circle;
        yield return say.Say($"{say.Circle(circle)}: {circle.PeriodS:0} s a turn, {Math.Floor(circle.StallMarginPct + 1e-6):0} % above the stall in the turn.");
        if (IsFlat(study))
            yield return say.Say($"Anything from {say.Circle(study.Optimum.FlatFrom)} to {say.Circle(study.Optimum.FlatTo)} climbs within {say.Vertical(0.1)} of the best once centred: steady beats exact.");
        foreach (var line in ByHeight(facts))
            yield return line;
        if (study.FirstOffsetM is > 0)
            yield return say["Low down the air flows in and helps you to the core; near the top it flows out and carries an off-centre circle away."];
    }

    public static IEnumerable<string> Leave(TechniqueFacts facts)
    {
        var say = facts.Measures;
        yield return say.Say($"When a turn or two give less than {say.Climb(0.75 * facts.Study.CentredClimbMs)}, three quarters of the best.");
        if (facts.At is { CarriesToCloud: true, CloudBaseAglM: { } cloudBase })
            yield return say.Say($"Below the cloud, at the distance that your rules ask for: the base stands at {say.Figures.Text(cloudBase)} at {facts.At.Time:HH:mm}.");
        else if (facts.Brief.Day.MaxUsableTop is { } top)
            yield return say.Say($"At the usable top, today {say.Figures.Text(top.Metres)}; the last of it costs time.");
        if (facts.Brief.Day.ThermalType.Kind == ThermalKind.ShortLived)
            yield return say["When shade reaches its source: the lift follows within minutes."];
        yield return say.Say($"At the latest at {say.AtLeast(facts.Rule.LeastHeight.Metres)} above the field.");
        if (facts.Pilot.Experience == Experience.LocalSolo)
            yield return say["When the way back needs the height you have. Your instructor sets the limit."];
    }

    /// <summary>The circle given is one of those that hardly cost anything, and there is a choice.</summary>
    internal static bool IsFlat(CentringResult study) =>
        study.Optimum.ClimbMs > 0
        && study.Optimum.FlatTo.BankDeg > study.Optimum.FlatFrom.BankDeg
        && study.Circle.BankDeg >= study.Optimum.FlatFrom.BankDeg && study.Circle.BankDeg <= study.Optimum.FlatTo.BankDeg;

    /// <summary>The best circle low, in the middle and at the top, as far as the group may circle there and the lift is usable.</summary>
    internal static IReadOnlyList<OptimumByHeight> Heights(TechniqueFacts facts) =>
        OptimumByHeight.LowMiddleTop(facts.Thermal, facts.Glider, facts.Rule.Circles, Height.FromMetres(facts.At.UsableTopAglM ?? 0));

    private static IEnumerable<string> ByHeight(TechniqueFacts facts)
    {
        var (say, heights) = (facts.Measures, Heights(facts));
        string[] names = [say["Low"], say["Middle"], say["Top"]];
        for (var i = 0; i < heights.Count; i++)
        {
            yield return heights[i] is { Optimum: { } best } there
                ? say.Say($"{names[(int)there.Part]} ({say.AtLeast(there.Height.Metres)}): best {say.Circle(best.Circle)}.")
                : say.Say($"{names[(int)heights[i].Part]} ({say.AtLeast(heights[i].Height.Metres)}): no circle of this glider climbs.");
        }
    }

    private static string Joined(string[] names, Measures say) => names.Length switch
    {
        1 => names[0],
        _ => say.Say($"{string.Join(", ", names[..^1])} and {names[^1]}"),
    };
}
