using System.Collections.Immutable;

namespace DayBrief.Reports;

/// <summary>Why a report is not the one that counts.</summary>
public enum ReportNotUsedReason
{
    /// <summary>A newer one of the same station counts.</summary>
    Older,

    /// <summary>The field's own station reports.</summary>
    OtherStation,

    /// <summary>A nearer station reports.</summary>
    Farther,

    /// <summary>How far its station is from the field is not known, and another's is.</summary>
    DistanceNotKnown,

    /// <summary>No observation or forecast was made (NIL).</summary>
    Nil,

    /// <summary>It is not of the time asked for.</summary>
    OtherTime,

    /// <summary>Several stations, of none of which it is known that it reports for the field.</summary>
    StationNotNamed,
}

/// <summary>A report that is left aside.</summary>
/// <typeparam name="T">METAR or TAF.</typeparam>
/// <param name="Report">What it says.</param>
/// <param name="Reason">Why it does not count.</param>
public sealed record ReportNotUsed<T>(T Report, ReportNotUsedReason Reason);

/// <summary>The one report that counts for a field, and those that do not.</summary>
/// <typeparam name="T">METAR or TAF.</typeparam>
/// <remarks>One rule everywhere, and no order of lines decides: the field's own station before every other, of the others the nearest
/// whose distance is known; where no distance is known, the only station. Of its reports the newest; of two of one time the
/// corrected one, and else the one given last. With several stations and nothing known, none counts: another station's fog is
/// not ours. Common practice, no source.</remarks>
public sealed record ReportChoice<T>
    where T : class
{
    /// <summary>The one that counts; null when there is none.</summary>
    public T? Used { get; init; }

    /// <summary>Its instant; null when it states none.</summary>
    public DateTimeOffset? At { get; init; }

    /// <summary>How far its station is from the field, km; null where not known, 0 for the field's own.</summary>
    public double? DistanceKm { get; init; }

    /// <summary>The others, in the order given.</summary>
    public ImmutableArray<ReportNotUsed<T>> NotUsed { get; init; } = [];
}

/// <summary>Chooses the report that counts.</summary>
public static class ReportChoice
{
    /// <summary>The observation that counts.</summary>
    /// <remarks>As <see cref="ReportChoice{T}"/>. A NIL never counts: what was observed before it still holds.</remarks>
    public static ReportChoice<AerodromeReport> Observation(IEnumerable<AerodromeReport> reports, ReportPlace place)
    {
        ArgumentNullException.ThrowIfNull(reports);
        return new ReportChoosing<AerodromeReport>(place).Of(
            [.. reports.Select(report => new ReportEntry<AerodromeReport>(report, report.Station, report.Time.NearestTo(place.Near), report.IsCorrected, report.IsNil))]);
    }

    /// <summary>The forecast that counts.</summary>
    /// <remarks>As <see cref="ReportChoice{T}"/>, newest by its time of issue, or where it states none by the begin of its validity. One
    /// that is withdrawn counts: what it withdraws must not come back.</remarks>
    public static ReportChoice<AerodromeForecast> Forecast(IEnumerable<AerodromeForecast> forecasts, ReportPlace place)
    {
        ArgumentNullException.ThrowIfNull(forecasts);
        return new ReportChoosing<AerodromeForecast>(place).Of(
            [.. forecasts.Select(forecast => new ReportEntry<AerodromeForecast>(
                forecast, forecast.Station, forecast.Dated.NearestTo(place.Near), forecast.IsAmended || forecast.IsCorrected || forecast.IsCancelled, forecast.IsNil))]);
    }
}
