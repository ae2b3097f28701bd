namespace DayBrief.Reports;

/// <summary>Tells where in a row of words a report begins or what stands around it does.</summary>
internal static class ReportBegin
{
    private static readonly string[] Flags = ["COR", "AMD", "AUTO", "RTD"];

    // Words of four letters before a time in remarks: "NEXT 091200Z".
    private static readonly string[] NoStation = ["NEXT", "LAST", "FCST", "ISSD", "FROM", "TILL", "AUTO", "WIND", "TAFS", "TIME", "DATE"];

    public static bool IsKind(string word) => word is "METAR" or "SPECI" or "TAF";

    /// <summary>Whether a report without a word for its kind begins here: at the beginning of a line (or after an end sign)
    /// with station and time; inside a line only where the time is followed by what follows a time.</summary>
    public static bool IsHead(List<ReportWord> words, int at, bool atStart)
    {
        var first = at;
        while (atStart && first < words.Count && Flags.Contains(words[first].Bare) && first < at + 3)
        {
            first++;
        }

        return IsStation(words, first) && (atStart ? Dated(words, first) : Timed(words, first) && Follows(words, first + 2));
    }

    /// <summary>Whether a bulletin's heading, the end of a telegram or the date line of an archive begins here: no part of the
    /// report before it.</summary>
    public static bool IsBetween(List<ReportWord> words, int at)
    {
        if (words[at].Bare is "NNNN" or "ZCZC" or "ZNNN")
        {
            return true;
        }

        var next = at + 1 < words.Count ? words[at + 1].Bare : "";
        return words[at].StartsLine
            && ((GroupShapes.Heading().IsMatch(words[at].Bare) && GroupShapes.Station().IsMatch(next) && at + 2 < words.Count && GroupShapes.PlainTime().IsMatch(words[at + 2].Bare))
                || (GroupShapes.ArchiveDate().IsMatch(words[at].Bare) && GroupShapes.ArchiveTime().IsMatch(next)));
    }

    private static bool IsStation(List<ReportWord> words, int at) =>
        at + 1 < words.Count && !words[at].Text.EndsWith('=')
        && GroupShapes.Station().IsMatch(words[at].Bare) && !NoStation.Contains(words[at].Bare);

    private static bool Timed(List<ReportWord> words, int at) => GroupShapes.Time().IsMatch(words[at + 1].Bare);

    private static bool Dated(List<ReportWord> words, int at) =>
        Timed(words, at)
        || words[at + 1].Bare == "NIL"
        || (GroupShapes.Period().IsMatch(words[at + 1].Bare) && Follows(words, at + 2));

    private static bool Follows(List<ReportWord> words, int at) =>
        at < words.Count
        && (words[at].Bare is "AUTO" or "COR" or "NIL" or "CNL" or "AMD" or "CAVOK"
            || GroupShapes.Correction().IsMatch(words[at].Bare)
            || GroupShapes.Wind().IsMatch(words[at].Bare)
            || GroupShapes.Period().IsMatch(words[at].Bare));
}
