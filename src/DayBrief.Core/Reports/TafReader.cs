namespace DayBrief.Reports;

/// <summary>Reads TAF.</summary>
/// <remarks>[WMO306] FM 51; [FAA28] for the United States' forms.</remarks>
public static class TafReader
{
    /// <summary>All TAF in a text, with bulletin headings or not; those without station or time are left out.</summary>
    public static IReadOnlyList<AerodromeForecast> ReadAll(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        return ReadableReports.ReadAll(ReportText.Split(text).Where(report => report.Kind == "TAF"), Read);
    }

    /// <summary>The first TAF in a text.</summary>
    /// <exception cref="InvalidReportException">There is none, or it has no station or time.</exception>
    public static AerodromeForecast Read(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        return Read(ReportText.Split(text).Find(report => report.Kind == "TAF")
            ?? throw new InvalidReportException("The text holds no TAF.", 1, null));
    }

    private static AerodromeForecast Read(ReportText text)
    {
        var head = ReportHead.Read(text);
        var period = head.First < text.Groups.Count ? Period(text.Groups[head.First]) : null;
        var groups = text.Groups.Skip(head.First + (period is null ? 0 : 1)).ToList();
        var remark = groups.IndexOf("RMK");
        var body = new TafBody(period?.From, period?.To);
        body.TakeAll(remark < 0 ? groups : groups[..remark]);
        return new()
        {
            Raw = text.Raw,
            Station = head.Station,
            Issued = head.Time,
            IsAmended = head.Words.Contains("AMD"),
            IsCorrected = head.Words.Contains("COR"),
            IsNil = head.Words.Contains("NIL"),
            IsCancelled = head.Words.Contains("CNL") || groups.Contains("CNL"),
            From = period?.From,
            To = period?.To,
            Groups = head.Words.Contains("NIL") || head.Words.Contains("CNL") || groups.Contains("CNL") ? [] : [.. body.Groups],
            Maxima = [.. body.Maxima],
            Minima = [.. body.Minima],
            Remarks = remark < 0 ? null : string.Join(' ', groups.Skip(remark + 1)),
            NotUnderstood = [.. body.NotUnderstood],
        };
    }

    internal static (DayTime From, DayTime To)? Period(string group) =>
        GroupShapes.Period().Match(group) is { Success: true } match
        && ReportHead.TimeOf(match.Groups[1].ValueSpan, match.Groups[2].ValueSpan, default) is { } from
        && ReportHead.TimeOf(match.Groups[3].ValueSpan, match.Groups[4].ValueSpan, default) is { } to
            ? (from, to)
            : null;
}
