namespace DayBrief.Reports;

/// <summary>Reads METAR and SPECI.</summary>
/// <remarks>[WMO306] FM 15 and FM 16; [FAA28] for the United States' forms.</remarks>
public static class MetarReader
{
    /// <summary>All METAR and SPECI in a text, with bulletin headings or not; those without station or time are left
    /// out.</summary>
    public static IReadOnlyList<AerodromeReport> ReadAll(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        return ReadableReports.ReadAll(ReportText.Split(text).Where(report => report.Kind != "TAF"), Read);
    }

    /// <summary>The first METAR or SPECI in a text.</summary>
    /// <exception cref="InvalidReportException">There is none, or it has no station or time.</exception>
    public static AerodromeReport Read(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        return Read(ReportText.Split(text).Find(report => report.Kind != "TAF")
            ?? throw new InvalidReportException("The text holds no METAR and no SPECI.", 1, null));
    }

    private static AerodromeReport Read(ReportText text)
    {
        var head = ReportHead.Read(text);
        var reading = new TrendReading();
        reading.TakeAll(GroupJoins.Of(text.Groups.Skip(head.First)));
        var trends = reading.Trends();
        return reading.Body.Report(text, head) with
        {
            Trends = [.. trends],
            Remarks = reading.Remarks,
        };
    }
}
