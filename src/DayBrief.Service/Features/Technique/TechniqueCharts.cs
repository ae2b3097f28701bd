using DayBrief.Flight.Centring;
using DayBrief.Flight.Thermals;
using DayBrief.Service.Charts;
using DayBrief.Units;

namespace DayBrief.Service.Features.Technique;

/// <summary>Plan and section of today's thermal with the reader's circle in it.</summary>
internal static class TechniqueCharts
{
    public static Drawing Plan(Thermal thermal, CentringResult study, Wind? wind, Figures figures, double width = TextStyle.PhoneWidth)
    {
        var circle = study.Circle;
        var updraft = thermal.At(thermal.Height);
        var offset = study.FirstOffsetM is { } typical && typical > 0.1 * circle.RadiusM ? typical : 0.5 * circle.RadiusM;
        var rollOut = RollOutOf(study, offset);
        return CirclePlan.Draw(new()
        {
            Contours = [.. Contours(updraft)],
            CircleRadiusM = circle.RadiusM,
            OffsetM = offset,
            LagDeg = study.LagDeg + (circle.RateDegS * study.Instrument.DisplayDelayS),
            RollOutAfterDeg = Math.Max(0, rollOut.AfterWorstReadingDeg),
            HalfRollDeg = RollOut.HalfRollDeg(circle),
            ShiftM = rollOut.ShiftM(circle),
            Seconds = (study.LagS + study.Instrument.DisplayDelayS, Math.Max(0, rollOut.AfterWorstReadingS), rollOut.LevelS),
            CoreMs = updraft.CentreUpdraftMs,
            Wind = wind,
            Unit = figures.Unit,
            Language = figures.Language,
            Width = width,
        });
    }

    /// <summary>That of the recommended way, as the words tell it: with the numbers that flew best, or, where the swing table gives the
    /// seconds, with those that bring this circle onto the core.</summary>
    private static RollOut RollOutOf(CentringResult study, double offsetM)
    {
        var told = study.Ranking.First(way => way.Way == study.Recommended).Parameters;
        if (!told.TryGetValue("afterWorstReadingDeg", out var degrees))
            return study.SimulatedRollOut;
        var rollOut = new RollOut(degrees, degrees / study.Circle.RateDegS, told.GetValueOrDefault("levelS"));
        return told.TryGetValue("shareOfOffset", out var share) ? rollOut.Moving(share * offsetM, study.Circle) : rollOut;
    }

    /// <summary>At the strongest time of the day.</summary>
    public static Drawing Section(TechniqueFacts facts)
    {
        var (top, figures) = (facts.At.UsableTopAglM!.Value, facts.Measures.Figures);
        return ThermalSection.Draw(new()
        {
            Slices = [.. Slices(facts.Thermal, top, facts.Brief.Day.Wind?.Mean.Speed.MetresPerSecond ?? 0)],
            Usable = (facts.Rule.LeastHeight.Metres, top),
            CloudBaseM = facts.At.CloudBaseAglM,
            DriftMs = facts.Brief.Day.Wind?.Mean.Speed.MetresPerSecond,
            Time = TimeOnly.FromDateTime(facts.At.Time.DateTime),
            Unit = figures.Unit,
            Language = figures.Language,
        });
    }

    /// <summary>The edge of the lift and the lines on which it is half and nine tenths of the core's.</summary>
    private static IEnumerable<LiftContour> Contours(LiftSection updraft)
    {
        foreach (var share in new[] { 0.0, 0.5, 0.9 })
        {
            var wanted = share * updraft.CentreUpdraftMs;
            var radius = Enumerable.Range(1, 400).Select(step => step * updraft.RadiusM / 200)
                .FirstOrDefault(distance => updraft.UpdraftAt(distance).MetresPerSecond <= wanted, 0);
            if (radius > 0)
                yield return new(radius, wanted);
        }
    }

    /// <summary>Up to where its updraft ends, or the cloud takes it.</summary>
    private static IEnumerable<ThermalSlice> Slices(Thermal thermal, double usableTopM, double windMs)
    {
        var axis = 0.0;
        var highest = Math.Min(Math.Max(0.9 * thermal.Depth.Metres, usableTopM), thermal.TopM);
        var step = highest / 24;
        for (var i = 1; i <= 24; i++)
        {
            var height = Math.Min(i * step, highest);
            var at = Height.FromMetres(height);
            var updraft = thermal.At(at);
            axis += step * ((Lean.Slope(thermal, at) ?? 0) + (Lean.HeldShare * windMs / thermal.CoreUpdraft.MetresPerSecond));
            if (updraft.CentreUpdraftMs > 0)
                yield return new(height, updraft.RadiusM, axis, updraft.CentreUpdraftMs, RadialFlow.OutwardMs(thermal, updraft.RadiusM, at));
        }
    }
}
