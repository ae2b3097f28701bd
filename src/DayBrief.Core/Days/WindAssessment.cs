using DayBrief.BoundaryLayer;
using DayBrief.Units;

namespace DayBrief.Days;

/// <summary>Judges the wind for thermals.</summary>
internal static class WindAssessment
{
    // Streets: wind along the layer of 5 m/s or more with little turning [FAA-13A] chapter 9, −z_i/L at most 25
    // [Grossman1982], [Weckwerth1997]; spacing three times the depth [FAA-13A].
    private const double StreetWindMs = 5;
    private const double StreetInstability = 25;
    private const double StreetTurnDegrees = 30;
    private const double StreetAspect = 3;

    // Common practice, no source: above 25 kt in the layer, or 4 kt per 1000 ft, thermals hardly hold together.
    private const double TooMuchWindMs = 12.9;
    private const double TooMuchShearMsPerKm = 6.8;

    // [FAA-13A] chapter 10: wind across the streets that grows by 10 kt or more within 5000 ft above them.
    private const double WaveGrowthMs = 5.1;
    private const double WaveWithinM = 1524;

    public static WindInLayer Of(LayerWind wind, double depthM, double updraftMs, double frictionMs, double obukhovM)
    {
        var top = Height.FromMetres(Math.Min(depthM, wind.Top.Metres));
        var mean = wind.Mean(top);
        var low = Height.FromMetres(Math.Min(100, top.Metres / 4));
        var shear = (wind.Change(low, top)?.MetresPerSecond ?? 0) / Math.Max(0.2, (top.Metres - low.Metres) / 1000);
        var ratio = obukhovM < 0 ? depthM / -obukhovM : double.NaN;
        var reasons = new List<Phrase>();
        var streets = Streets(wind, top, mean, ratio, reasons);
        return new()
        {
            Top = top,
            Mean = mean,
            ShearMsPerKm = shear,
            LowLevelMaximum = LowMaximum(wind),
            FrictionVelocityMs = double.IsFinite(frictionMs) ? frictionMs : null,
            InstabilityRatio = double.IsFinite(ratio) ? ratio : null,
            StreetsLikely = streets,
            StreetSpacing = streets ? Height.FromMetres(StreetAspect * depthM) : null,
            LeanDegrees = updraftMs > 0.1 ? Math.Atan(shear * depthM / 2000 / updraftMs) * 180 / Math.PI : null,
            DriftIn10Minutes = Height.FromMetres(mean.Speed.MetresPerSecond * 600),
            TooMuch = TooMuch(mean, shear, reasons),
            WaveHint = Wave(wind, depthM, mean, reasons),
            Reasons = reasons,
        };
    }

    private static bool Streets(LayerWind wind, Height top, Wind mean, double ratio, List<Phrase> reasons)
    {
        var turn = wind.At(Height.FromMetres(top.Metres * 0.2)) is { } lower && wind.At(Height.FromMetres(top.Metres * 0.9)) is { } upper
            ? Math.Abs(((upper.FromDegrees - lower.FromDegrees + 540) % 360) - 180)
            : double.NaN;
        var likely = mean.Speed.MetresPerSecond >= StreetWindMs && ratio <= StreetInstability && turn <= StreetTurnDegrees;
        if (likely)
        {
            reasons.Add(Phrase.Of(
                $"Streets are likely: {mean.Speed} in the layer, turning {turn:0}° with height, depth {ratio:0} times the Obukhov length (25 or less)."));
        }

        return likely;
    }

    private static bool TooMuch(Wind mean, double shear, List<Phrase> reasons)
    {
        if (mean.Speed.MetresPerSecond > TooMuchWindMs)
            reasons.Add(Phrase.Of($"Much wind: {mean.Speed} in the layer; above {Speed.FromKnots(25)} thermals hardly hold together."));
        if (shear > TooMuchShearMsPerKm)
            reasons.Add(Phrase.Of($"Much shear: {new PerHeight(shear, OfSpeed: true)}; above {new PerHeight(7, OfSpeed: true)} thermals are torn."));
        return mean.Speed.MetresPerSecond > TooMuchWindMs || shear > TooMuchShearMsPerKm;
    }

    private static bool Wave(LayerWind wind, double depthM, Wind mean, List<Phrase> reasons)
    {
        if (wind.At(Height.FromMetres(depthM)) is not { } at || wind.At(Height.FromMetres(depthM + WaveWithinM)) is not { } above)
            return false;
        var across = (mean.FromDegrees + 90) * Math.PI / 180;
        double Along(Wind w) => Math.Abs((w.EastwardMs * Math.Sin(across)) + (w.NorthwardMs * Math.Cos(across)));
        var growth = Math.Max(Along(above) - Along(at), above.Speed.MetresPerSecond - at.Speed.MetresPerSecond);
        if (growth < WaveGrowthMs || above.Speed.MetresPerSecond < 7)
            return false;
        reasons.Add(Phrase.Of($"Wave is possible above the thermals: the wind grows by {Speed.FromMetresPerSecond(growth)} in the {Height.FromMetres(1500)} over them. A hint only."));
        return true;
    }

    private static LowLevelMaximum? LowMaximum(LayerWind wind)
    {
        var best = default(LowLevelMaximum?);
        var reports = wind.Reports.Where(report => report.Height.Metres <= 1500).ToArray();
        foreach (var (height, report) in reports.Where(report => report.Height.Metres is > 20 and <= 1000))
        {
            var over = reports.Where(other => other.Height.Metres > height.Metres).Select(other => other.Wind.Speed.MetresPerSecond).DefaultIfEmpty(double.MaxValue).Min();
            if (report.Speed.MetresPerSecond >= over + 2 && !(best?.Speed >= report.Speed))
                best = new(height, report.Speed);
        }

        return best;
    }
}
