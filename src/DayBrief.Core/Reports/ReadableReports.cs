namespace DayBrief.Reports;

/// <summary>Reads many reports and leaves out what is none.</summary>
internal static class ReadableReports
{
    public static List<T> ReadAll<T>(IEnumerable<ReportText> texts, Func<ReportText, T> read)
    {
        var all = new List<T>();
        foreach (var text in texts)
        {
            try
            {
                all.Add(read(text));
            }
            catch (InvalidReportException)
            {
                // A bulletin may hold a heading or a torn report between good ones.
            }
        }

        return all;
    }
}
