namespace DayBrief.Logs.Igc;

/// <summary>From dates and times of day to seconds since the first day's midnight, UTC.</summary>
internal sealed class IgcClock
{
    private const double Day = 86_400;

    private double? _last;
    private double _midnight;
    private DateOnly? _stated;

    /// <summary>The date of the first fix, or the last date stated before it.</summary>
    public DateOnly? First { get; private set; }

    /// <summary>Takes a date header.</summary>
    /// <returns>Whether it changes a date that fixes already stand under.</returns>
    public bool Dated(DateOnly date)
    {
        var changes = _last is not null && date != _stated;
        _stated = date;
        if (_last is null || First is null)
            First = date;
        else if (date >= First)
            _midnight = (date.DayNumber - First.Value.DayNumber) * Day;
        return changes;
    }

    /// <summary>A time of day. A fall of more than half a day is midnight; a smaller one goes back in time.</summary>
    /// <returns>Seconds since the first midnight; null where time goes back.</returns>
    public double? Seconds(double timeOfDay)
    {
        var seconds = _midnight + timeOfDay;
        if (_last is { } last && seconds < last)
        {
            if (last - seconds <= Day / 2)
                return null;
            _midnight += Day;
            seconds += Day;
        }

        _last = seconds;
        return seconds;
    }
}
