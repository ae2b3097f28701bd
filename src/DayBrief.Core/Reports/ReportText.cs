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

    /// <summary>Finds all reports in a text: each begins with its kind, or after the end sign of the one before it, or with a
    /// station and a time.</summary>
    public static List<ReportText> Split(string text)
    {
        var reports = new List<ReportText>();
        ReportText? open = null;
        var kind = "";
        foreach (var (word, line, next) in Words(text))
        {
            var bare = word.TrimEnd('=', '$');
            if (bare is "METAR" or "SPECI" or "TAF")
            {
                // "TAF TAF" and "TAF AMD TAF" happen.
                open = open is { Groups.Count: <= 1 } && open.Kind == bare ? open : Begin(reports, kind = bare, line);
            }
            else if (open is null && GroupShapes.Station().IsMatch(bare) && next is not null && GroupShapes.Time().IsMatch(next))
            {
                open = Begin(reports, kind, line);
            }

            if (open is not null && bare.Length > 0 && bare is not ("METAR" or "SPECI" or "TAF") && open.Groups.Count < MostGroups)
            {
                open.Groups.Add(bare);
            }

            open = word.EndsWith('=') ? null : open;
        }

        return [.. reports.Where(report => report.Groups.Count > 0).Select(Known)];
    }

    private static ReportText Begin(List<ReportText> reports, string kind, int line)
    {
        reports.Add(new(kind, [], line));
        return reports[^1];
    }

    // Without a word before it, a period of validity after the time makes a TAF.
    private static ReportText Known(ReportText report) =>
        report.Kind.Length > 0 ? report : report with { Kind = report.Groups.Take(4).Any(group => GroupShapes.Period().IsMatch(group)) ? "TAF" : "METAR" };

    private static IEnumerable<(string Word, int Line, string? Next)> Words(string text)
    {
        var line = 0;
        (string Word, int Line)? held = null;
        using var reader = new StringReader(text);
        while (reader.ReadLine() is { } content)
        {
            line++;
            foreach (var word in content.Replace("=", "= ", StringComparison.Ordinal).Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries))
            {
                var upper = word.ToUpperInvariant();
                if (held is { } before)
                {
                    yield return (before.Word, before.Line, upper);
                }

                held = (upper, line);
            }
        }

        if (held is { } last)
        {
            yield return (last.Word, last.Line, null);
        }
    }
}
