namespace DayBrief.Service.Infrastructure;

/// <summary>A site's clock on the days when it is put forward or back.</summary>
internal static class LocalTime
{
    /// <summary>The moment of a local time: one that is skipped is the first after the gap, of one that comes twice the first.</summary>
    public static DateTimeOffset At(TimeZoneInfo zone, DateOnly date, TimeOnly time)
    {
        var local = date.ToDateTime(time);
        while (zone.IsInvalidTime(local))
            local = local.AddMinutes(1);
        return new(local, zone.IsAmbiguousTime(local) ? zone.GetAmbiguousTimeOffsets(local).Max() : zone.GetUtcOffset(local));
    }

    /// <summary>The local date of a moment.</summary>
    public static DateOnly DateOf(TimeZoneInfo zone, DateTimeOffset moment) =>
        DateOnly.FromDateTime(TimeZoneInfo.ConvertTime(moment, zone).DateTime);
}
