namespace DayBrief.Reports;

/// <summary>Day of the month, hour and minute (UTC), as aerodrome reports give time. Hour 24 is the end of the day.</summary>
/// <param name="Day">1 to 31; 0 where not stated (trends).</param>
/// <param name="Hour">0 to 24.</param>
/// <param name="Minute">0 to 59.</param>
public readonly record struct DayTime(int Day, int Hour, int Minute)
{
    /// <summary>The instant with this day of the month that is nearest to another instant; null when no day is
    /// stated, or neither the month nor the one before or after has such a day.</summary>
    public DateTimeOffset? NearestTo(DateTimeOffset reference)
    {
        DateTimeOffset? nearest = null;
        var first = new DateTimeOffset(reference.UtcDateTime.Year, reference.UtcDateTime.Month, 1, 0, 0, 0, TimeSpan.Zero);
        for (var months = -1; months <= 1; months++)
        {
            var month = first.AddMonths(months);
            if (Day >= 1 && Day <= DateTime.DaysInMonth(month.Year, month.Month))
            {
                var candidate = month.AddDays(Day - 1).AddHours(Hour).AddMinutes(Minute);
                nearest = nearest is { } known && (known - reference).Duration() <= (candidate - reference).Duration() ? known : candidate;
            }
        }

        return nearest;
    }
}
