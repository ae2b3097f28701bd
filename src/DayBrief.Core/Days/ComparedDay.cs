using System.Collections.Immutable;
using DayBrief.Reports;
using DayBrief.Thermodynamics;
using DayBrief.Units;

namespace DayBrief.Days;

/// <summary>Holds a day's reports against its computed course and tells where it goes otherwise.</summary>
/// <remarks>The thresholds are common practice, no source: a difference that is worth an amendment, and no smaller than
/// what reports can show (whole degrees, every half-hour).</remarks>
public static class ComparedDay
{
    private const double WorthMinutes = 20;
    private const double WorthHpa = 2;

    // Reports give whole degrees: what is read as 22 °C may be 22.5 °C.
    private const double RoundingK = 0.5;
    private const double WorthKelvins = 2 + RoundingK;

    /// <summary>Every deviation of the day, one of a kind. The same reports give the same list.</summary>
    public static ImmutableArray<Deviation> Of(DayWatch watch)
    {
        ImmutableArray<TimedReport> reports = [.. watch.Reports.OrderBy(report => report.At)];
        Deviation?[] all =
        [
            Trigger(watch, [.. Temperatures(watch, reports)]),
            Warmth(watch, [.. Temperatures(watch, reports)]),
            Worst(DeviationKind.WindOverLimit, watch.WindLimit, reports, wind => wind.Speed),
            Worst(DeviationKind.GustOverLimit, watch.GustLimit, reports, wind => wind.Gust),
            Thunder(reports),
            ThunderForecast(watch),
            Qnh(watch, reports),
        ];
        return [.. all.OfType<Deviation>()];
    }

    private static IEnumerable<TimedTemperature> Temperatures(DayWatch watch, ImmutableArray<TimedReport> reports) =>
        from report in reports
        where report.Report.Temperature is not null && watch.Course.At(report.At) is not null
        // A station above the field is colder by the dry adiabat while the air is stirred.
        let kelvins = watch.StationAboveFieldM * Air.DryLapseRate
        select new TimedTemperature(report.At, report.Report.Temperature!.Value + TemperatureDifference.FromKelvins(kelvins));

    private static Deviation? Trigger(DayWatch watch, TimedTemperature[] observed)
    {
        if (watch.Course.TriggerTemperature is not { } trigger)
            return null;
        var reached = Array.FindIndex(observed, at => at.Temperature >= trigger);
        if (watch.Course.TriggerTime is not { } expected)
            return reached < 0 ? null : new(DeviationKind.TriggerEarly, observed[reached].Time, observed[reached].Temperature.Celsius, trigger.Celsius);
        if (reached >= 0 && (expected - observed[reached].Time).TotalMinutes is var early and >= WorthMinutes)
            return new(DeviationKind.TriggerEarly, observed[reached].Time, observed[reached].Temperature.Celsius, trigger.Celsius, early);
        var until = watch.Course.Last ?? DateTimeOffset.MaxValue;
        var missed = observed.Take(reached < 0 ? observed.Length : reached).LastOrDefault(at =>
            at.Time <= until && (at.Time - expected).TotalMinutes >= WorthMinutes && (trigger - at.Temperature).Kelvins > RoundingK);
        if (missed == default)
            return null;
        var (kind, last) = reached < 0 ? (DeviationKind.TriggerNotYet, missed) : (DeviationKind.TriggerLate, observed[reached]);
        return new(kind, last.Time, last.Temperature.Celsius, trigger.Celsius, (last.Time - expected).TotalMinutes);
    }

    private static Deviation? Warmth(DayWatch watch, TimedTemperature[] observed)
    {
        if (observed.Length == 0 || watch.Course.At(observed[^1].Time) is not { } computed)
            return null;
        var (time, temperature) = observed[^1];
        var difference = (temperature - computed).Kelvins;
        return Math.Abs(difference) < WorthKelvins
            ? null
            : new(difference > 0 ? DeviationKind.Warmer : DeviationKind.Colder, time, temperature.Celsius, computed.Celsius);
    }

    private static Deviation? Worst(
        DeviationKind kind, Speed? limit, ImmutableArray<TimedReport> reports, Func<SurfaceWind, Speed?> speedOf)
    {
        var worst = reports
            .Select(report => (report.At, Speed: report.Report.Conditions.Wind is { } wind ? speedOf(wind) : null))
            .Where(report => report.Speed > limit)
            .OrderByDescending(report => report.Speed!.Value.Knots)
            .FirstOrDefault();
        return worst.Speed is { } speed ? new(kind, worst.At, speed.Knots, limit!.Value.Knots) : null;
    }

    private static Deviation? Thunder(ImmutableArray<TimedReport> reports) => reports
        .Select(report => (report.At, Group: report.Report.Conditions.Weather.FirstOrDefault(weather => weather.IsThunderstorm)?.Code))
        .Where(report => report.Group is not null)
        .Select(report => new Deviation(DeviationKind.Thunder, report.At, Group: report.Group))
        .FirstOrDefault();

    private static Deviation? ThunderForecast(DayWatch watch) =>
        watch.LatestForecast is { } latest
        && (watch.BriefForecast is null || ThunderIn(watch.BriefForecast) is null)
        && ThunderIn(latest.Forecast) is { } group
            ? new(DeviationKind.ThunderForecast, latest.At, Group: group)
            : null;

    private static string? ThunderIn(AerodromeForecast forecast) => forecast.Groups
        .FirstOrDefault(group => group.Conditions.Weather.Any(weather => weather.IsThunderstorm))?.Raw;

    private static Deviation? Qnh(DayWatch watch, ImmutableArray<TimedReport> reports)
    {
        var settings = reports.Where(report => report.Report.Qnh is not null).ToArray();
        if (settings.Length == 0)
            return null;
        var first = (watch.Qnh ?? settings[0].Report.Qnh!.Value).Hectopascals;
        var now = settings[^1].Report.Qnh!.Value.Hectopascals;
        return Math.Abs(now - first) < WorthHpa ? null : new(DeviationKind.Qnh, settings[^1].At, now, first);
    }
}
