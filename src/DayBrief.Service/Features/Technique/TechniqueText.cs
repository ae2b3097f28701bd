using System.Globalization;
using DayBrief.Days;
using DayBrief.Flight.Centring;
using DayBrief.Flight.Gliders;
using DayBrief.Flight.Thermals;
using DayBrief.Service.Charts;
using DayBrief.Units;

namespace DayBrief.Service.Features.Technique;

/// <summary>Everything the words are made from.</summary>
internal sealed record TechniqueFacts(Brief Brief, Thermal Thermal, CentringResult Study, Glider Glider, Pilot Pilot, Measures Measures);

/// <summary>How lengths and speeds are said to this reader.</summary>
internal sealed record Measures(bool Metric)
{
    public string Length(double metres) => Metric
        ? $"{N(Math.Round(metres / 5) * 5)} m"
        : $"{N(Math.Round(metres / 0.3048 / 10) * 10)} ft";

    public string Distance(double metres) => Metric
        ? $"{N(metres / 1000, "0.0")} km"
        : $"{N(metres / 1852, "0.0")} NM";

    public string Speed(double metresPerSecond) => Metric
        ? $"{N(metresPerSecond * 3.6)} km/h"
        : $"{N(Units.Speed.FromMetresPerSecond(metresPerSecond).Knots)} kt";

    public string Vertical(double metresPerSecond) =>
        new Figures(Metric ? HeightUnit.Metres : HeightUnit.Feet, Languages.Language.English).Vertical(metresPerSecond);

    public static string N(double value, string format = "#,0") => value.ToString(format, CultureInfo.InvariantCulture).Replace('-', '−');
}

/// <summary>Finding it, centring it, holding it, when to leave, what not to do: in words, each line from today's numbers.</summary>
internal static class TechniqueText
{
    public static IEnumerable<string> Find(TechniqueFacts facts)
    {
        var (day, m, thermal) = (facts.Brief.Day, facts.Measures, facts.Thermal);
        yield return $"One about every {m.Distance(Spacing.AlongTrackM(thermal.Depth))} along your track, {m.Length(2 * thermal.RadiusM)} across"
            + (day.Cloud is { Dry: true, Unknown: false } ? "; no cloud marks them, so ground, birds and other gliders must." : ".");
        if (day.ThermalType.InStreets && day.Wind is { StreetSpacing: { } apart } wind)
            yield return $"They stand in streets along {wind.Mean.FromDegrees:000}°, {m.Distance(apart.Metres)} apart: fly along a street, cross quickly.";
        if (day.Wind is { Mean: var mean } && mean.Speed.MetresPerSecond > 1)
        {
            var height = Height.FromMetres(0.4 * thermal.Depth.Metres);
            var drift = Lean.DriftM(mean.Speed, height, thermal.CoreUpdraft);
            yield return $"At mid-height look up to {m.Distance(drift)} downwind of the ground it came from.";
        }

        if (day.ThermalType.Kind == ThermalKind.ShortLived && thermal.Lifetime is { } life)
            yield return $"At one height it lasts about {Measures.N(life.TotalMinutes)} min: turn at the first good surge, go on quickly when it fades.";
        if (facts.Pilot.Experience == Experience.CrossCountry)
            yield return $"Expect about {m.Vertical(facts.Study.CentredClimbMs)} when centred; set the speed-to-fly ring to what you really average, not to that.";
    }

    public static IEnumerable<string> Centre(TechniqueFacts facts)
    {
        var (study, m) = (facts.Study, facts.Measures);
        if (facts.Pilot.Experience == Experience.BeforeSolo)
        {
            yield return $"With your instructor: steady bank about {Measures.N(study.Circle.BankDeg)}° and {m.Speed(study.Circle.SpeedMs)}, look out, feel the surge, and say where it was strongest.";
            yield break;
        }

        var late = study.LagS + study.Instrument.DisplayDelayS;
        yield return $"In this circle you know of the air {Measures.N(late, "0.0")} s late, {Measures.N(study.Circle.RateDegS * late)}° of turn.";
        yield return WayText.Of(study.Ranking.First(way => way.Way == study.Recommended), study, m);
        var others = study.Tied.Where(way => way != study.Recommended).Select(WayText.Name).ToArray();
        if (others.Length > 0)
            yield return $"Today {Joined(others)} cannot be told from it; the simpler is given.";
        if (study.SimulatedRollOut is var best && study.Recommended is not (CentringWay.StraightenAndShift or CentringWay.BySwing))
            yield return $"If you straighten: begin {Measures.N(Math.Max(0, best.AfterWorstReadingS), "0.0")} s after the weakest reading, wings level {Measures.N(best.LevelS, "0.0")} s.";
        if (study.Ranking.FirstOrDefault(way => way.Way == CentringWay.LevelAfter270) is { TurnsToCentre: { } turns } && turns < 8)
            yield return "Turned the wrong way? Keep turning, level after 270° for a few seconds, then the same turn again.";
    }

    public static IEnumerable<string> Hold(TechniqueFacts facts)
    {
        var (study, m) = (facts.Study, facts.Measures);
        var circle = study.Circle;
        yield return $"Bank {Measures.N(circle.BankDeg)}°, {m.Speed(circle.SpeedMs)}: circle of {m.Length(circle.RadiusM)} radius, {Measures.N(circle.PeriodS)} s a turn, {Measures.N(circle.StallMarginPct)} % above the stall in the turn.";
        if (study.Optimum.ClimbMs > 0)
            yield return $"Any bank from {Measures.N(study.Optimum.FlatFromDeg)}° to {Measures.N(study.Optimum.FlatToDeg)}° climbs within {m.Vertical(0.1)} of the best: steady beats exact.";
        foreach (var line in ByHeight(facts))
            yield return line;
        if (study.FirstOffsetM is > 0)
            yield return "Low down the air flows in and helps you to the core; near the top it flows out and carries an off-centre circle away.";
    }

    public static IEnumerable<string> Leave(TechniqueFacts facts)
    {
        var m = facts.Measures;
        yield return $"When a turn or two give less than {m.Vertical(0.75 * facts.Study.CentredClimbMs)}, three quarters of the best.";
        if (facts.Brief.Day.MaxUsableTop is { } top)
            yield return $"At the usable top, today {m.Length(Math.Round(top.Metres / 30.48) * 30.48)}; the last of it costs time.";
        if (facts.Brief.Day.ThermalType.Kind == ThermalKind.ShortLived)
            yield return "When shade reaches its source: the lift follows within minutes.";
        if (facts.Pilot.Experience == Experience.LocalSolo)
            yield return "When the way back needs the height you have. Your instructor sets the limit.";
    }

    private static IEnumerable<string> ByHeight(TechniqueFacts facts)
    {
        string[] names = ["Low", "Middle", "Top"];
        var (m, heights) = (facts.Measures, OptimumByHeight.LowMiddleTop(facts.Thermal, facts.Glider));
        for (var i = 0; i < heights.Count; i++)
        {
            yield return heights[i] is { Optimum: { } best } there
                ? $"{names[i]} ({m.Length(there.Height.Metres)}): best {Measures.N(best.Circle.BankDeg)}° and {m.Speed(best.Circle.SpeedMs)}, climb {m.Vertical(best.ClimbMs)}."
                : $"{names[i]} ({m.Length(heights[i].Height.Metres)}): no circle of this glider climbs.";
        }
    }

    private static string Joined(string[] names) => names.Length switch
    {
        1 => names[0],
        _ => $"{string.Join(", ", names[..^1])} and {names[^1]}",
    };
}
