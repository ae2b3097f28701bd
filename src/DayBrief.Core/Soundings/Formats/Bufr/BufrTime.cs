namespace DayBrief.Soundings.Formats.Bufr;

/// <summary>An instant from its parts.</summary>
internal static class BufrTime
{
    /// <summary>Null where the parts make no date.</summary>
    public static DateTimeOffset? Of(int year, int month, int day, int hour, int minute, int second) =>
        year is >= 1900 and <= 2100 && month is >= 1 and <= 12 && day >= 1 && day <= DateTime.DaysInMonth(year, month)
        && hour is >= 0 and < 24 && minute is >= 0 and < 60
            ? new DateTimeOffset(year, month, day, hour, minute, second is >= 0 and < 60 ? second : 0, TimeSpan.Zero)
            : null;
}
