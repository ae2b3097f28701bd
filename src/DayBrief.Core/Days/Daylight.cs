namespace DayBrief.Days;

/// <summary>The part of a local date in which people fly: between sunrise and sunset, or the whole computed day where the sun
/// does neither.</summary>
internal static class Daylight
{
    public static (DateTimeOffset From, DateTimeOffset To) Of(Brief brief)
    {
        var (day, sun) = (brief.Day, brief.Day.Sun);
        return (sun.Sunrise ?? day.Steps[0].Time, sun.Sunset ?? day.Steps[^1].Time);
    }

    /// <summary>A local time of the date. One that the clocks leave out counts as if they had not changed; of one that comes
    /// twice the second is meant.</summary>
    public static DateTimeOffset At(Brief brief, TimeOnly time)
    {
        var local = brief.Date.ToDateTime(time);
        return Local(brief, new DateTimeOffset(local, brief.Site.TimeZone.GetUtcOffset(local)));
    }

    public static DateTimeOffset Local(Brief brief, DateTimeOffset instant) =>
        TimeZoneInfo.ConvertTime(instant, brief.Site.TimeZone);

    /// <summary>The part of a time that lies in daylight; null when none does.</summary>
    public static (DateTimeOffset From, DateTimeOffset To)? Clip(Brief brief, DateTimeOffset? from, DateTimeOffset? to)
    {
        var (start, end) = Of(brief);
        var (first, last) = (from > start ? from.Value : start, to < end ? to.Value : end);
        return first < last ? (Local(brief, first), Local(brief, last)) : null;
    }

    /// <summary>A hazard with the time of usable thermals, where the day has some.</summary>
    public static Hazard WithThermals(Brief brief, Hazard hazard) =>
        hazard with { From = brief.Day.Times.FirstUsable, To = brief.Day.Times.FirstUsable is null ? null : brief.Day.Times.Last };

    /// <summary>When the report was made; null where it does not say.</summary>
    public static DateTimeOffset? Reported(Brief brief) =>
        brief.Observation?.Time.NearestTo(brief.Day.Sun.Noon) is { } time ? Local(brief, time) : null;

    /// <summary>From the first to the last step of the day that is so; null when none is.</summary>
    public static (DateTimeOffset From, DateTimeOffset To)? When(Brief brief, Func<DayStep, bool> so)
    {
        var steps = brief.Day.Steps.Where(so).ToArray();
        return steps.Length > 0 ? (steps[0].Time, steps[^1].Time) : null;
    }
}
