using DayBrief.Reports;
using DayBrief.Units;

namespace DayBrief.Days;

/// <summary>Cautions of low cloud and poor visibility.</summary>
internal static class CloudHazards
{
    /// <summary>Cloud base below which a brief warns: 2,000 ft. Common practice, no source.</summary>
    public const double LowCloudFt = 2000;

    /// <summary>[SERA5001]: flight visibility of 5 km is asked for below 10,000 ft.</summary>
    public const double VisibilityM = 5000;

    public static IEnumerable<Hazard?> Of(Brief brief)
    {
        var bound = Height.FromFeet(LowCloudFt).Metres;
        yield return brief.Day.Cloud.FirstBase is { } low && low.Metres < bound
            ? new(HazardKind.LowCloud, low.Metres)
            {
                From = brief.Day.Cloud.First,
                To = Daylight.When(brief, step => step.CloudBaseAglM < bound)?.To,
            }
            : null;
        yield return Worst(brief, HazardKind.LowCloud, Ceiling, bound);
        yield return Worst(brief, HazardKind.PoorVisibility, conditions => conditions.Visibility?.Metres, VisibilityM);
    }

    /// <summary>The least of a figure in the report and the forecast, where it lies below a bound.</summary>
    private static Hazard? Worst(Brief brief, HazardKind kind, Func<AerodromeConditions, double?> figure, double below)
    {
        var report = brief.Observation;
        Hazard?[] all =
        [
            report is not null && figure(report.Conditions) is { } seen
                ? new(kind, seen) { Source = WindSource.Reported, About = report.Station }
                : null,
            .. ForecastTimes.Of(brief).Where(entry => figure(entry.Group.Conditions) is not null)
                .Select(entry => new Hazard(kind, figure(entry.Group.Conditions))
                {
                    From = entry.From,
                    To = entry.To,
                    Source = WindSource.Forecast,
                    About = brief.Forecast!.Station,
                }),
        ];
        return all.OfType<Hazard>().Where(hazard => hazard.Value < below).MinBy(hazard => hazard.Value);
    }

    /// <summary>Lowest base of broken or overcast cloud, or the vertical visibility into fog, m.</summary>
    private static double? Ceiling(AerodromeConditions conditions) =>
        conditions.Clouds
            .Where(layer => layer.Amount is CloudAmount.Broken or CloudAmount.Overcast)
            .Select(layer => layer.Base?.Metres)
            .Append(conditions.VerticalVisibility?.Metres)
            .Min();
}
