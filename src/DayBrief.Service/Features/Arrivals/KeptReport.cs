namespace DayBrief.Service.Features.Arrivals;

/// <summary>Kinds of reports that are fetched.</summary>
internal enum ReportKind
{
    /// <summary>METAR and SPECI.</summary>
    Observation,

    /// <summary>TAF.</summary>
    Forecast,
}

/// <summary>A report as it came.</summary>
/// <param name="SiteId">The site it was fetched for.</param>
/// <param name="Kind">Observation or forecast.</param>
/// <param name="Station">Location indicator.</param>
/// <param name="At">When it was observed or issued.</param>
/// <param name="Raw">As written.</param>
/// <param name="Origin">The host it came from.</param>
/// <param name="ArrivedAt">When it came first.</param>
internal sealed record KeptReport(
    string SiteId, ReportKind Kind, string Station, DateTimeOffset At, string Raw, string Origin, DateTimeOffset ArrivedAt);
