using DayBrief.BoundaryLayer;
using DayBrief.Units;

namespace DayBrief.Days;

/// <summary>Decides the kind of thermals by one table of thresholds, at the strongest time of the day.</summary>
/// <remarks>
/// Each number speaks for one kind, or for none between its two thresholds; the majority decides, the sun per 100 m when
/// they tie. All thresholds are common practice without source, except where named.
/// <list type="table">
/// <item><term>sun to lift the top by 100 m</term><description>short-lived from 40 min, broad to 20 min (the computed growth at that time: heat supplied against heat needed)</description></item>
/// <item><term>stability of the 500 m above the top</term><description>short-lived from 6 K/km, broad to 4 K/km (the standard atmosphere has 3.3)</description></item>
/// <item><term>depth</term><description>short-lived to 1200 m, broad from 1800 m</description></item>
/// <item><term>turnover time z_i/w*</term><description>short-lived to 10 min, broad from 13 min (typical 9 to 15, [Deardorff1970])</description></item>
/// <item><term>radius of the average thermal</term><description>short-lived to 90 m, broad from 130 m [Allen2006]</description></item>
/// <item><term>cumulus</term><description>short-lived without, broad with clouds deeper than 500 m</description></item>
/// </list>
/// </remarks>
internal static class TypeAssessment
{
    private const double CappedLowM = 1000;
    private const double StableKPerKm = 6;
    private const double LeaningDegrees = 30;
    private const double StoppedMinutes = 600;

    private static readonly Height Lift = Height.FromMetres(100);

    public static ThermalType Of(DayFrame frame, DayTrack track, Headline headline, CloudOutlook cloud, WindInLayer? wind)
    {
        var at = headline.Strongest;
        var capped = headline.MaxDepthM < CappedLowM && StabilityAbove(frame.Air.Column, headline.MaxDepthM) >= StableKPerKm;
        var cap = capped ? Phrase.Of($"Capped low: stable air ends them at {Height.FromMetres(headline.MaxDepthM)}.") : null;
        if (at < 0)
            return new() { Kind = ThermalKind.None, CappedLow = capped, Reasons = [NoThermals(frame, headline), .. cap is null ? [] : new[] { cap }] };
        var criteria = Criteria(frame, track, at, cloud).ToArray();
        var minutes = criteria[0].Value;
        var votes = criteria.Count(c => c.Kind == ThermalKind.ShortLived) - criteria.Count(c => c.Kind == ThermalKind.Broad);
        var kind = votes != 0
            ? votes > 0 ? ThermalKind.ShortLived : ThermalKind.Broad
            : minutes > 28 ? ThermalKind.ShortLived : ThermalKind.Broad;
        var leaning = wind?.LeanDegrees > LeaningDegrees;
        var reasons = criteria.Where(c => c.Kind == kind).Select(c => Words(c)).ToList();
        if (criteria[0].Kind != kind)
            reasons.Add(Phrase.Of($"It takes {minutes:0} min of sun to lift the top by {Lift:length}."));
        if (leaning)
            reasons.Add(Phrase.Of($"Leaning: the shear tilts them by {wind!.LeanDegrees:0}°."));
        if (wind is { StreetsLikely: true, StreetSpacing: { } spacing })
            reasons.Add(Phrase.Of($"In streets: about {spacing:distance} apart, along {Rounding.Direction(wind.Mean.FromDegrees):000}°."));
        if (cap is not null)
            reasons.Add(cap);
        return new()
        {
            Kind = kind,
            Leaning = leaning,
            InStreets = wind?.StreetsLikely ?? false,
            CappedLow = capped,
            Reasons = [.. reasons],
            Criteria = [.. criteria],
        };
    }

    private static IEnumerable<TypeCriterion> Criteria(DayFrame frame, DayTrack track, int at, CloudOutlook cloud)
    {
        var depth = track.DepthM[at];
        yield return Judge("sun to lift the top by 100 m, min", MinutesPer100M(track, at), 20, 40, lowIsBroad: true);
        yield return Judge("stability above, K/km", StabilityAbove(frame.Air.Column, depth), 4, StableKPerKm, lowIsBroad: true);
        yield return Judge("depth, m", depth, 1200, 1800, lowIsBroad: false);
        yield return Judge("turnover, min", depth / track.WStar[at] / 60, 10, 13, lowIsBroad: false);
        yield return Judge("radius, m", Updraft.At(0.4, Math.Cbrt(0.4), depth, track.WStar[at]).RadiusM, 90, 130, lowIsBroad: false);
        if (!cloud.Unknown)
        {
            var cloudDepth = cloud is { Top: { } top, Base: { } low } ? Math.Max(1, top.Metres - low.Metres) : 0;
            yield return Judge("cumulus depth, m", cloudDepth, 0, 500, lowIsBroad: false);
        }
    }

    private static TypeCriterion Judge(string name, double value, double low, double high, bool lowIsBroad)
    {
        var kind = value <= low
            ? lowIsBroad ? ThermalKind.Broad : ThermalKind.ShortLived
            : value >= high ? lowIsBroad ? ThermalKind.ShortLived : ThermalKind.Broad : ThermalKind.None;
        return new(name, value, kind);
    }

    /// <summary>Minutes of the sun at that time of day that lift the top by 100 m: from the growth half an hour around it.</summary>
    private static double MinutesPer100M(DayTrack track, int at)
    {
        var (from, to) = (at, at);
        while (from > 0 && from > at - 6 && double.IsFinite(track.DepthM[from - 1]))
            from--;
        while (to < track.DepthM.Length - 1 && to < at + 6 && double.IsFinite(track.DepthM[to + 1]))
            to++;
        var risen = track.DepthM[to] - track.DepthM[from];
        return risen > 1 ? Math.Min(StoppedMinutes, 100 / risen * (to - from) * DayFrame.StepSeconds / 60) : StoppedMinutes;
    }

    private static double StabilityAbove(Column column, double depth)
    {
        var (low, high) = (Math.Min(column.TopM - 1, depth + 50), Math.Min(column.TopM, depth + 550));
        return high - low > 50 ? (column.At(high).Theta - column.At(low).Theta) / (high - low) * 1000 : 0;
    }

    private static Phrase Words(TypeCriterion criterion)
    {
        var shortLived = criterion.Kind == ThermalKind.ShortLived;
        var value = criterion.Value;
        return criterion.Name.Split(',')[0] switch
        {
            "sun to lift the top by 100 m" when value >= StoppedMinutes => Phrase.Of($"Short-lived: the top no longer rises, however long the sun shines."),
            "sun to lift the top by 100 m" when shortLived => Phrase.Of($"Short-lived: it takes {value:0} min of sun to lift the top by {Lift:length}."),
            "sun to lift the top by 100 m" => Phrase.Of($"Broad: {value:0} min of sun lift the top by {Lift:length}."),
            "stability above" when shortLived => Phrase.Of($"The air above is stable: {new PerHeight(value, OfSpeed: false)}."),
            "stability above" => Phrase.Of($"The air above is hardly stable: {new PerHeight(value, OfSpeed: false)}."),
            "depth" when shortLived => Phrase.Of($"The layer is shallow: {Height.FromMetres(value)}."),
            "depth" => Phrase.Of($"The layer is deep: {Height.FromMetres(value)}."),
            "turnover" => Phrase.Of($"The air turns over in {value:0} min."),
            "radius" when shortLived => Phrase.Of($"The thermals are narrow."),
            "radius" => Phrase.Of($"The thermals are wide."),
            _ => shortLived ? Phrase.Of($"No cumulus feeds them.") : Phrase.Of($"Cumulus {Height.FromMetres(value)} deep feeds them."),
        };
    }

    internal static Phrase NoThermals(DayFrame frame, Headline headline)
    {
        if (frame.FirstStep >= frame.Times.Length)
            return Phrase.Of($"The ascent is later than the day: no thermals can be computed from it.");
        if (double.IsNaN(headline.MaxDepthM))
        {
            return frame.Sun.IsPolarNight && frame.Prescribed is null
                ? Phrase.Of($"The sun does not rise: no thermals.")
                : Phrase.Of($"The ground gives the air no heat: no thermals.");
        }

        return headline.MaxDepthM < frame.Site.UsableDepth.Metres
            ? Phrase.Of($"No usable thermals: they reach {Height.FromMetres(headline.MaxDepthM)}, the site asks for {frame.Site.UsableDepth}.")
            : Phrase.Of($"No usable thermals: none gives a climb of {frame.Site.UsableClimb:climb} up to {frame.Site.UsableDepth}.");
    }
}
