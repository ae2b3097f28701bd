namespace DayBrief.Service.Charts;

/// <summary>Days for looking at charts. Invented; none was computed from air.</summary>
internal static class InventedDays
{
    /// <summary>A good summer day with cumulus from noon.</summary>
    public static DayPictureInput Cumulus { get; } = Day(new(4, 52), new(21, 18), new(11, 10), new(18, 50), 1650, cloudFrom: new(12, 30)) with
    {
        FreezingLevelM = 3050,
        CeilingM = 1676,
    };

    /// <summary>Deep and dry; the freezing level far above.</summary>
    public static DayPictureInput Blue { get; } = Day(new(6, 10), new(19, 42), new(10, 5), new(17, 40), 2900) with
    {
        FreezingLevelM = 4700,
        Unit = HeightUnit.Metres,
    };

    /// <summary>Too stable to leave the ground.</summary>
    public static DayPictureInput None { get; } = new()
    {
        Moments = [.. Times(new(8, 10), new(16, 20)).Select(time => new DayMoment(time, null))],
        Sunrise = new(8, 10),
        Sunset = new(16, 20),
        FreezingLevelM = 400,
    };

    /// <summary>Two spells with a shield of cloud between them, towers late.</summary>
    public static DayPictureInput TwoSpells { get; } = Cumulus with
    {
        Moments = [.. Cumulus.Moments.Select(m =>
            m.Time.Hour is 14 or 15 ? new DayMoment(m.Time, null)
            : m.Time.Hour is 17 ? m with { CloudTopM = 6200 } : m)],
        KeyTimes = [new(new(11, 10), "trigger"), new(new(11, 35), "first usable"), new(new(18, 20), "last")],
        CeilingM = null,
    };

    private static DayPictureInput Day(TimeOnly sunrise, TimeOnly sunset, TimeOnly first, TimeOnly last, double topM, TimeOnly? cloudFrom = null) => new()
    {
        Sunrise = sunrise,
        Sunset = sunset,
        Moments = [.. Times(sunrise, sunset).Select(time =>
        {
            var share = (time - first) / (last - first);
            if (time < first || time > last)
                return new DayMoment(time, null);
            var top = topM * (0.3 + (0.7 * Math.Sin(Math.PI / 2 * Math.Min(1, 1.6 * share)))) * (1 - (0.35 * Math.Pow(share, 8)));
            var cloudy = time >= cloudFrom && share < 0.9;
            return new DayMoment(
                time, top, (0.8 * top) - 60, (1.13 * top) + 40,
                cloudy ? top + 30 : null,
                cloudy ? top + 30 + (420 * Math.Sin(Math.PI * share)) : null);
        })],
        KeyTimes = [new(first.AddMinutes(-25), "trigger"), new(first, "first usable"), new(last, "last")],
    };

    private static IEnumerable<TimeOnly> Times(TimeOnly from, TimeOnly to)
    {
        for (var minutes = 5 * Math.Ceiling(from.ToTimeSpan().TotalMinutes / 5); minutes <= to.ToTimeSpan().TotalMinutes; minutes += 5)
            yield return TimeOnly.FromTimeSpan(TimeSpan.FromMinutes(minutes));
    }
}
