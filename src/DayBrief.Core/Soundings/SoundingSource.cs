using DayBrief.Units;

namespace DayBrief.Soundings;

/// <summary>Where an ascent comes from. Null is what its text does not say.</summary>
public sealed record SoundingSource
{
    /// <summary>Name of the file or input it was read from.</summary>
    public string? Name { get; init; }

    /// <summary>The recognised format, such as "FM 35 TEMP" or "CSV".</summary>
    public required string Format { get; init; }

    /// <summary>Station identifier as written.</summary>
    public string? Station { get; init; }

    /// <summary>Where the balloon was launched.</summary>
    public Position? Position { get; init; }

    /// <summary>Height of the launch site.</summary>
    public Altitude? Elevation { get; init; }

    /// <summary>The time it is valid for.</summary>
    public DateTimeOffset? ValidAt { get; init; }

    /// <summary>Day of the month and UTC hour, where the format states no month (WMO FM 35).</summary>
    public DayAndHour? DayAndHour { get; init; }

    /// <summary>UTC time of day at which the balloon was launched, where the format states it apart from
    /// <see cref="ValidAt"/>; ascents of an hour H are usually launched up to an hour before it.</summary>
    public TimeOnly? LaunchTime { get; init; }
}

/// <summary>Day of the month and hour (UTC) of a message that states neither month nor year.</summary>
/// <param name="Day">1 to 31.</param>
/// <param name="Hour">0 to 23, UTC.</param>
public readonly record struct DayAndHour(int Day, int Hour)
{
    /// <summary>The latest instant with this day and hour that is not after the end of a given UTC date; null when
    /// none of the three months before has such a day.</summary>
    public DateTimeOffset? LatestUpTo(DateOnly date)
    {
        for (var back = 0; back <= 3; back++)
        {
            var month = new DateOnly(date.Year, date.Month, 1).AddMonths(-back);
            if (Day <= DateTime.DaysInMonth(month.Year, month.Month)
                && new DateOnly(month.Year, month.Month, Day) is var day && day <= date)
            {
                return new DateTimeOffset(day.ToDateTime(new TimeOnly(Hour, 0)), TimeSpan.Zero);
            }
        }

        return null;
    }
}
