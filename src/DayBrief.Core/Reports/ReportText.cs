namespace DayBrief.Reports;

/// <summary>One report cut out of a text, with its groups.</summary>
/// <param name="Kind">METAR, SPECI or TAF.</param>
/// <param name="Groups">Groups from the station or the words before it (AMD, COR) on.</param>
/// <param name="Line">Line where it begins, from 1.</param>
internal sealed record ReportText(string Kind, List<string> Groups, int Line)
{
    private const int MostGroups = 500;

    /// <summary>As written, in one line.</summary>
    public string Raw => $"{Kind} {string.Join(' ', Groups)}";

    private bool IsNamed { get; init; }

    private bool HasStation => Groups.Exists(group => GroupShapes.Station().IsMatch(group) && group != "AUTO");

    /// <summary>Finds all reports in a text: each begins with its kind, or at the beginning of a line or after an end sign with
    /// a station and a time. No report is ever made of two.</summary>
    public static List<ReportText> Split(string text)
    {
        var reports = new List<ReportText>();
        var words = ReportWord.Of(text);
        ReportText? open = null;
        var kind = "";
        for (var i = 0; i < words.Count; i++)
        {
            var bare = words[i].Bare;
            if (ReportBegin.IsKind(bare))
            {
                // "TAF TAF" and "TAF AMD TAF" happen.
                kind = bare;
                open = open is { HasStation: false, IsNamed: true } && open.Kind == bare ? open : Begin(reports, bare, words[i].Line, isNamed: true);
                continue;
            }

            if (ReportBegin.IsBetween(words, i))
            {
                open = null;
            }
            else if (open is not { HasStation: false } && ReportBegin.IsHead(words, i, open is null || words[i].StartsLine))
            {
                open = Begin(reports, kind, words[i].Line, isNamed: false);
            }

            if (open is not null && bare.Length > 0 && open.Groups.Count < MostGroups)
            {
                open.Groups.Add(bare);
            }

            open = words[i].Text.EndsWith('=') ? null : open;
        }

        return [.. reports.Where(report => report.Groups.Count > 0).Select(Known)];
    }

    private static ReportText Begin(List<ReportText> reports, string kind, int line, bool isNamed)
    {
        reports.Add(new(kind, [], line) { IsNamed = isNamed });
        return reports[^1];
    }

    // Without its own word before it, a period of validity makes a TAF, and a NIL is of the kind of the bulletin.
    private static ReportText Known(ReportText report)
    {
        if (report.IsNamed)
        {
            return report;
        }

        var isForecast = report.Groups.Take(5).Any(group => GroupShapes.Period().IsMatch(group));
        var isNil = report.Groups.Take(4).Any(group => group is "NIL" or "CNL");
        return report with { Kind = isForecast ? "TAF" : isNil && report.Kind.Length > 0 ? report.Kind : report.Kind == "SPECI" ? "SPECI" : "METAR" };
    }
}
