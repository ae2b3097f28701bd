namespace DayBrief.Reports;

/// <summary>For where and when a report is chosen from many.</summary>
public sealed record ReportPlace
{
    /// <summary>Location indicator of the station that reports for the field; null when none is named.</summary>
    public string? Station { get; init; }

    /// <summary>Distances of other stations from the field, km, by location indicator, as far as they are known.</summary>
    public IReadOnlyDictionary<string, double> DistancesKm { get; init; } = new Dictionary<string, double>();

    /// <summary>An instant near which the reports are: it tells the month that they leave out.</summary>
    public required DateTimeOffset Near { get; init; }

    /// <summary>Reports made after this are not used; null for no bound.</summary>
    public DateTimeOffset? NotAfter { get; init; }

    /// <summary>Reports made before this are not used; null for no bound.</summary>
    public DateTimeOffset? NotBefore { get; init; }
}
