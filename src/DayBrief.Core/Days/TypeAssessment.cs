using DayBrief.BoundaryLayer;
using DayBrief.Units;

namespace DayBrief.Days;

/// <summary>Decides the kind of thermals at the strongest time of the day by <see cref="TypeScore"/>, and says why.</summary>
internal static class TypeAssessment
{
    private const double CappedLowM = 1000;
    private const double StableKPerKm = 6;
    private const double LeaningDegrees = 30;
    private const double StoppedMinutes = 600;
    private const double WorthSaying = 0.2;

    private static readonly Height Lift = Height.FromMetres(100);

    public static ThermalType Of(
        DayFrame frame, DayTrack track, Headline headline, CloudOutlook cloud, WindInLayer? wind, Ensemble? ensemble)
    {
        var at = headline.Strongest;
        var capped = headline.MaxDepthM < CappedLowM && StabilityAbove(frame.Air.Column, headline.MaxDepthM) >= StableKPerKm;
        var cap = capped ? Phrase.Of($"Capped low: stable air ends them at {Height.FromMetres(headline.MaxDepthM)}.") : null;
        if (at < 0)
            return new() { Kind = ThermalKind.None, ChancePercent = Chance(ensemble, ThermalKind.None), CappedLow = capped, Reasons = [NoThermals(frame, headline), .. cap is null ? [] : new[] { cap }] };
        var score = TypeScore.Of(track, headline, cloud.DepthM);
        var kind = KindOf(score.Broadness);
        var criteria = Criteria(score, cloud).ToArray();
        var leaning = wind?.LeanDegrees > LeaningDegrees;
        var reasons = criteria.Where(c => c.Kind == kind).Select(c => Words(c)).ToList();
        if (criteria[0].Kind != kind)
            reasons.Add(Phrase.Of($"It takes {score.LiftMin:0} min of sun to lift the top by {Lift:length}."));
        if (leaning)
            reasons.Add(Phrase.Of($"Bent: the shear tilts foot and head by {wind!.LeanDegrees:0}°."));
        if (wind is { StreetsLikely: true, StreetSpacing: { } spacing })
            reasons.Add(Phrase.Of($"In streets: about {spacing:distance} apart, along {Rounding.Direction(wind.Mean.FromDegrees):000}°."));
        if (cap is not null)
            reasons.Add(cap);
        return new()
        {
            Kind = kind,
            ChancePercent = Chance(ensemble, kind),
            Leaning = leaning,
            InStreets = wind?.StreetsLikely ?? false,
            CappedLow = capped,
            Reasons = [.. reasons],
            Criteria = [.. criteria],
        };
    }

    /// <summary>Share of the courses of the ensemble with this kind, per cent; null without an ensemble.</summary>
    private static double? Chance(Ensemble? ensemble, ThermalKind kind) =>
        ensemble is null ? null : 100.0 * ensemble.Broadness.Count(broadness => KindOf(broadness) == kind) / ensemble.Broadness.Length;

    private static ThermalKind KindOf(double broadness) => double.IsNaN(broadness)
        ? ThermalKind.None
        : broadness < 0 ? ThermalKind.ShortLived : ThermalKind.Broad;

    private static IEnumerable<TypeCriterion> Criteria(TypeScore score, CloudOutlook cloud)
    {
        yield return Judge("sun to lift the top by 100 m, min", score.LiftMin, score.Lift);
        yield return Judge("turnover, min", score.TurnoverMin, score.Turnover);
        yield return Judge("radius of the picked thermal, m", score.RadiusM, score.Radius);
        if (!cloud.Unknown)
            yield return Judge("cumulus depth, m", score.CloudDepthM, score.Cloud);
    }

    private static TypeCriterion Judge(string name, double value, double speaks) => new(
        name, value, Math.Abs(speaks) < WorthSaying ? ThermalKind.None : speaks < 0 ? ThermalKind.ShortLived : ThermalKind.Broad);

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
            "turnover" => Phrase.Of($"The air turns over in {value:0} min."),
            "radius of the picked thermal" when shortLived => Phrase.Of($"The thermals are narrow."),
            "radius of the picked thermal" => Phrase.Of($"The thermals are wide."),
            _ when value <= 0 => Phrase.Of($"No cumulus feeds them."),
            _ when shortLived => Phrase.Of($"The cumulus is only {Height.FromMetres(value)} deep."),
            _ => Phrase.Of($"Cumulus {Height.FromMetres(value)} deep feeds them."),
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
