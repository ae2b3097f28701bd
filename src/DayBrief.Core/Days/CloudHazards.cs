using DayBrief.Reports;
using DayBrief.Units;

namespace DayBrief.Days;

/// <summary>Cautions of low cloud and poor visibility, each report's and group's at its own time.</summary>
internal static class CloudHazards
{
    /// <summary>Cloud base below which a brief warns: 2,000 ft. Common practice, no source.</summary>
    public const double LowCloudFt = 2000;

    /// <summary>[SERA5001]: flight visibility of 5 km is asked for below 10,000 ft.</summary>
    public const double VisibilityM = 5000;

    public static IEnumerable<Hazard?> Of(Brief brief)
    {
        var limits = brief.Site.Limits;
        var bound = Height.FromFeet(LowCloudFt).Metres;
        var first = brief.Day.Cloud.FirstBase is { } low && low.Metres < bound
            ? new Hazard(HazardKind.LowCloud, low.Metres)
            {
                From = brief.Day.Cloud.First,
                To = Daylight.When(brief, step => step.CloudBaseAglM < bound)?.To,
            }
            : null;
        return
        [
            first,
            .. Told(brief, Ceiling, new(HazardKind.CeilingBelowLeast, limits.LeastCloudCeiling?.Metres, UsualLimits.CeilingM), HazardKind.LowCloud, bound),
            .. Told(brief, conditions => conditions.Visibility?.Metres, new(HazardKind.VisibilityBelowLeast, limits.LeastVisibilityM, UsualLimits.VisibilityM), HazardKind.PoorVisibility, VisibilityM),
        ];
    }

    /// <summary>A figure of the report and the forecast where it lies below the least, or else below what is worth a line; the
    /// lowest first.</summary>
    private static IEnumerable<Hazard> Told(Brief brief, Func<AerodromeConditions, double?> figure, Least least, HazardKind otherwise, double below)
    {
        Hazard[] all =
        [
            .. brief.Observation is { } report && figure(report.Conditions) is { } seen
                ? new[] { new Hazard(otherwise, seen) { From = Daylight.Reported(brief), Source = WindSource.Reported, About = report.Station } }
                : [],
            .. ForecastTimes.Of(brief).Where(part => figure(part.Conditions) is not null)
                .Select(part => new Hazard(otherwise, figure(part.Conditions)) { From = part.From, To = part.To, Source = WindSource.Forecast, About = brief.Forecast!.Station, Quoted = part.Group.Raw, Risk = part.RiskOf(Harm.Accident) }),
        ];
        return all.OrderBy(hazard => hazard.Value)
            .Select(hazard => hazard.Value < least.Bound
                ? hazard with { Kind = least.Kind, Passed = [new(null, least.Bound, least.Set is not null)] }
                : hazard with { Risk = null, Quoted = null })
            .Where(hazard => hazard.Kind == least.Kind || hazard.Value < below);
    }

    /// <summary>Lowest base of broken or overcast cloud, or the vertical visibility into fog, m.</summary>
    private static double? Ceiling(AerodromeConditions conditions) =>
        conditions.Clouds
            .Where(layer => layer.Amount is CloudAmount.Broken or CloudAmount.Overcast)
            .Select(layer => layer.Base?.Metres)
            .Append(conditions.VerticalVisibility?.Metres)
            .Min();

    /// <summary>A least that the site sets, or the usual one.</summary>
    private readonly record struct Least(HazardKind Kind, double? Set, double Usual)
    {
        public double Bound => Set ?? Usual;
    }
}
