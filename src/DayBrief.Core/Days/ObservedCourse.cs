using System.Collections.Immutable;
using DayBrief.Thermodynamics;
using DayBrief.Units;

namespace DayBrief.Days;

/// <summary>An observed temperature beside the computed one.</summary>
/// <param name="Time">When it was observed.</param>
/// <param name="Station">Who observed it.</param>
/// <param name="Observed">The observed temperature, brought to the field's height.</param>
/// <param name="Computed">The computed temperature of that moment.</param>
public readonly record struct ObservedPoint(DateTimeOffset Time, string Station, Temperature Observed, Temperature Computed)
{
    /// <summary>Observed minus computed.</summary>
    public TemperatureDifference Difference => Observed - Computed;
}

/// <summary>The morning's observed temperatures laid on the computed course, and what they make of the trigger.</summary>
public sealed record ObservedCourse
{
    // Reports give whole degrees.
    private const double RoundingK = 0.5;

    /// <summary>Observations in order of time.</summary>
    public ImmutableArray<ObservedPoint> Points { get; init; } = [];

    /// <summary>When the trigger temperature is reached if the day keeps the difference that was observed last; null when it is not
    /// reached so, when it is reached already, and without observation or trigger.</summary>
    public DateTimeOffset? Trigger { get; init; }

    /// <summary>How much later than computed that is; negative is earlier.</summary>
    public TimeSpan? Later { get; init; }

    /// <summary>The computed day reaches its trigger, and with the observed difference it does not.</summary>
    public bool TriggerIsLost { get; init; }

    /// <summary>When the trigger temperature was first observed; null while it was not.</summary>
    public DateTimeOffset? Reached { get; init; }

    /// <summary>Of a watched day.</summary>
    /// <remarks>The whole course is shifted by the difference observed last: common practice, no source. A difference within the
    /// rounding of reports (0.5 °C) shifts nothing.</remarks>
    public static ObservedCourse Of(DayWatch watch)
    {
        var points = Observed(watch);
        var course = new ObservedCourse { Points = points };
        if (points.Length == 0 || watch.Course is not { TriggerTemperature: { } trigger, TriggerTime: { } expected })
            return course;
        var reached = points.Where(point => point.Observed >= trigger).Select(point => (DateTimeOffset?)point.Time).FirstOrDefault();
        if (reached is not null)
            return course with { Reached = reached };
        var difference = Math.Abs(points[^1].Difference.Kelvins) <= RoundingK ? default : points[^1].Difference;
        var time = difference == default && points[^1].Time < expected ? expected : When(watch.Course, trigger, difference, points[^1].Time);
        return course with { Trigger = time, Later = time - expected, TriggerIsLost = time is null };
    }

    private static ImmutableArray<ObservedPoint> Observed(DayWatch watch) =>
    [
        .. from report in watch.Reports
           where report.Report.Temperature is not null && watch.Course.At(report.At) is not null
           orderby report.At
           // A station above the field is colder by the dry adiabat while the air is stirred.
           let kelvins = watch.StationAboveFieldM * Air.DryLapseRate
           select new ObservedPoint(
               report.At, report.Report.Station, report.Report.Temperature!.Value + TemperatureDifference.FromKelvins(kelvins), watch.Course.At(report.At)!.Value),
    ];

    /// <summary>The first moment, not before the last observation, at which the shifted course is as warm as the trigger.</summary>
    private static DateTimeOffset? When(DayCourse course, Temperature trigger, TemperatureDifference difference, DateTimeOffset from)
    {
        for (var i = 1; i < course.Screen.Length; i++)
        {
            var (before, after) = (course.Screen[i - 1], course.Screen[i]);
            var (low, high) = (before.Temperature + difference, after.Temperature + difference);
            if (after.Time >= from && high >= trigger)
            {
                var share = low >= trigger || high == low ? 0 : (trigger - low).Kelvins / (high - low).Kelvins;
                var time = before.Time + (share * (after.Time - before.Time));
                return time < from ? from : time;
            }
        }

        return null;
    }
}
