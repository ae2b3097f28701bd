using System.Globalization;
using System.Text.RegularExpressions;

namespace DayBrief.Reports;

/// <summary>Station and time at the beginning of a report, and the words around them.</summary>
internal sealed record ReportHead(string Station, DayTime Time, HashSet<string> Words, int First)
{
    private static readonly string[] Flags = ["COR", "AMD", "AUTO", "NIL", "RTD", "CNL"];

    /// <exception cref="InvalidReportException">No station or no time.</exception>
    public static ReportHead Read(ReportText report)
    {
        var words = new HashSet<string>(StringComparer.Ordinal);
        var at = Flagged(report.Groups, 0, words);
        var station = at < report.Groups.Count ? report.Groups[at] : "";
        if (!GroupShapes.Station().IsMatch(station))
        {
            throw new InvalidReportException($"Line {report.Line}: {report.Kind} without a location indicator of four letters.", report.Line, station);
        }

        at = Flagged(report.Groups, at + 1, words);
        var when = at < report.Groups.Count ? report.Groups[at] : "";
        if (TimeOf(GroupShapes.HeadTime().Match(when)) is { } time)
        {
            return new(station, time, words, Flagged(report.Groups, at + 1, words));
        }

        // A NIL may go without a time, and Norwegian and naval TAF have their validity alone.
        return words.Contains("NIL") || (report.Kind == "TAF" && GroupShapes.Period().IsMatch(when))
            ? new(station, default, words, at)
            : throw new InvalidReportException($"Line {report.Line}: {report.Kind} {station} without a time such as 211150Z.", report.Line, when);
    }

    /// <summary>Day, hour and minute of three figures pairs; null if they make no time.</summary>
    public static DayTime? TimeOf(Match match) => match.Success
        ? TimeOf(match.Groups[1].ValueSpan, match.Groups[2].ValueSpan, match.Groups[3].ValueSpan)
        : null;

    public static DayTime? TimeOf(ReadOnlySpan<char> day, ReadOnlySpan<char> hour, ReadOnlySpan<char> minute)
    {
        var invariant = CultureInfo.InvariantCulture;
        var time = new DayTime(int.Parse(day, invariant), int.Parse(hour, invariant), minute.IsEmpty ? 0 : int.Parse(minute, invariant));
        return time is { Day: >= 1 and <= 31, Hour: <= 24, Minute: <= 59 } ? time : null;
    }

    private static int Flagged(List<string> groups, int at, HashSet<string> words)
    {
        while (at < groups.Count && (Flags.Contains(groups[at]) || GroupShapes.Correction().IsMatch(groups[at])))
        {
            // CCA, CCB … are corrections, in Canada also after the time.
            words.Add(groups[at].StartsWith("CC", StringComparison.Ordinal) ? "COR" : groups[at]);
            at++;
        }

        return at;
    }
}
