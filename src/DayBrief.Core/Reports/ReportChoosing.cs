namespace DayBrief.Reports;

/// <summary>A report and what the choice looks at.</summary>
internal sealed record ReportEntry<T>(T Report, string Station, DateTimeOffset? At, bool Replaces, bool IsNil);

/// <summary>Applies the rule of <see cref="ReportChoice{T}"/>.</summary>
internal sealed class ReportChoosing<T>(ReportPlace place)
    where T : class
{
    public ReportChoice<T> Of(IReadOnlyList<ReportEntry<T>> entries)
    {
        var usable = entries.Where(entry => !entry.IsNil && IsOfTime(entry)).ToList();
        var station = Station(usable);
        var used = usable.Where(entry => entry.Station == station)
            .OrderBy(entry => entry.At ?? DateTimeOffset.MinValue).ThenBy(entry => entry.Replaces).LastOrDefault();
        return new()
        {
            Used = used?.Report,
            At = used?.At,
            DistanceKm = used is null ? null : Distance(used.Station),
            NotUsed = [.. entries.Where(entry => entry != used).Select(entry => new ReportNotUsed<T>(entry.Report, Reason(entry, station)))],
        };
    }

    private string? Station(List<ReportEntry<T>> usable)
    {
        var stations = usable.Select(entry => entry.Station).Distinct().ToList();
        if (stations.Find(IsOwn) is { } own)
        {
            return own;
        }

        var nearest = stations.Where(station => Distance(station) is not null)
            .OrderBy(station => Distance(station)).ThenBy(station => station, StringComparer.Ordinal).FirstOrDefault();
        return nearest ?? (stations.Count == 1 ? stations[0] : null);
    }

    private bool IsOwn(string station) => string.Equals(station, place.Station?.Trim(), StringComparison.OrdinalIgnoreCase);

    private double? Distance(string station) => IsOwn(station) ? 0 : place.DistancesKm.TryGetValue(station, out var km) ? km : null;

    private bool IsOfTime(ReportEntry<T> entry) => !(entry.At > place.NotAfter) && !(entry.At < place.NotBefore);

    private ReportNotUsedReason Reason(ReportEntry<T> entry, string? station) =>
        entry.IsNil ? ReportNotUsedReason.Nil
        : !IsOfTime(entry) ? ReportNotUsedReason.OtherTime
        : station is null ? ReportNotUsedReason.StationNotNamed
        : entry.Station == station ? ReportNotUsedReason.Older
        : IsOwn(station) ? ReportNotUsedReason.OtherStation
        : Distance(entry.Station) is null ? ReportNotUsedReason.DistanceNotKnown
        : ReportNotUsedReason.Farther;
}
