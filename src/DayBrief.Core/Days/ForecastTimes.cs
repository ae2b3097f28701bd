using DayBrief.Reports;

namespace DayBrief.Days;

/// <summary>When each group of an aerodrome forecast holds in daylight.</summary>
internal static class ForecastTimes
{
    /// <summary>Groups with the part of daylight in which they hold.</summary>
    /// <remarks>[WMO306] FM 51: what holds at the beginning and what becomes holds until the next change that stays; what is
    /// temporary or probable only within its own time. A change counts from the beginning of its time.</remarks>
    public static IEnumerable<(ForecastGroup Group, DateTimeOffset From, DateTimeOffset To)> Of(Brief brief)
    {
        if (brief.Forecast is not { } forecast || forecast.IsCancelled || forecast.IsNil)
            yield break;
        var noon = brief.Day.Sun.Noon;
        DateTimeOffset? At(DayTime? time) => time?.NearestTo(noon);
        var groups = forecast.Groups;
        for (var i = 0; i < groups.Length; i++)
        {
            var from = At(groups[i].From) ?? At(forecast.From);
            var to = Stays(groups[i])
                ? At(groups.Skip(i + 1).FirstOrDefault(Stays)?.From) ?? At(forecast.To)
                : At(groups[i].To) ?? At(forecast.To);
            if (Daylight.Clip(brief, from, to) is { } part)
                yield return (groups[i], part.From, part.To);
        }
    }

    private static bool Stays(ForecastGroup group) =>
        group.Kind is ForecastKind.Initial or ForecastKind.From or ForecastKind.Becoming;
}
