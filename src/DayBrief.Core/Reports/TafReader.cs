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
        var first = head.First < text.Groups.Count ? text.Groups[head.First] : "";
        var isOld = Period(first) is null && OldPeriod(first) is not null;
        var period = Period(first) ?? OldPeriod(first);
        var groups = GroupJoins.Of(text.Groups.Skip(head.First + (period is null ? 0 : 1)));
        var remark = groups.FindIndex(group => group.StartsWith("RMK", StringComparison.Ordinal));
        var body = new TafBody(period?.From, period?.To, isOld);
        body.TakeAll(remark < 0 ? groups : groups[..remark]);
        var isNil = head.Words.Contains("NIL") || groups is ["NIL", ..];
        var isCancelled = head.Words.Contains("CNL") || groups.Contains("CNL");
        var remarks = string.Join(' ', [.. body.Remarks, .. remark < 0 ? [] : groups.Skip(remark + 1)]);
        return new()
        {
            Raw = text.Raw,
            Station = head.Station,
            Issued = head.Time,
            IsAmended = head.Words.Contains("AMD"),
            IsCorrected = head.Words.Contains("COR"),
            IsNil = isNil,
            IsCancelled = isCancelled,
            From = period?.From,
            To = period?.To,
            Groups = isNil || isCancelled ? [] : [.. body.Groups],
            Maxima = [.. body.Maxima],
            Minima = [.. body.Minima],
            Remarks = remarks.Length > 0 || remark >= 0 ? remarks : null,
            NotUnderstood = [.. body.NotUnderstood],
        };
    }

    internal static (DayTime From, DayTime To)? Period(string group) =>
        GroupShapes.Period().Match(group) is { Success: true } match
        && ReportHead.TimeOf(match.Groups[1].ValueSpan, match.Groups[2].ValueSpan, default) is { } from
        && ReportHead.TimeOf(match.Groups[3].ValueSpan, match.Groups[4].ValueSpan, default) is { } to
            ? (from, to)
            : null;

    private static (DayTime From, DayTime To)? OldPeriod(string group)
    {
        if (GroupShapes.OldPeriod().Match(group) is not { Success: true } match
            || ReportHead.TimeOf(match.Groups[1].ValueSpan, match.Groups[2].ValueSpan, default) is not { } from
            || ReportHead.TimeOf(match.Groups[1].ValueSpan, match.Groups[3].ValueSpan, default) is not { } to)
        {
            return null;
        }

        // An end that is not after the begin is on the next day; at the end of a month that is the 1st, which only a date tells.
        return (from, to.Hour > from.Hour ? to : to with { Day = from.Day == 31 ? 1 : from.Day + 1 });
    }
}
