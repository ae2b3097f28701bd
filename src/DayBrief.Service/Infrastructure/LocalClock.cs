namespace DayBrief.Service.Infrastructure;

/// <summary>Turns a site's local times into instants, also on the days when its clocks change.</summary>
internal static class LocalClock
{
    /// <summary>A time that the clocks skip counts as the moment right after the skip; one that they show twice as its first.</summary>
    public static DateTimeOffset InstantOf(DateOnly date, TimeOnly time, TimeZoneInfo zone)
    {
        var local = date.ToDateTime(time);
        while (zone.IsInvalidTime(local))
            local = local.AddMinutes(1);
        return zone.IsAmbiguousTime(local)
            ? new(local, zone.GetAmbiguousTimeOffsets(local).Max())
            : new(local, zone.GetUtcOffset(local));
    }

    public static DateOnly DateAt(DateTimeOffset now, TimeZoneInfo zone) =>
        DateOnly.FromDateTime(TimeZoneInfo.ConvertTime(now, zone).DateTime);
}
