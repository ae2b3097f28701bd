using System.Text.RegularExpressions;

namespace DayBrief.Reports;

/// <summary>One word of a text that holds reports, in capitals.</summary>
/// <param name="Text">The word with its end sign, if it has one.</param>
/// <param name="Line">Line where it stands, from 1.</param>
/// <param name="StartsLine">First of its line, or after a mark-up tag that ends one.</param>
internal readonly partial record struct ReportWord(string Text, int Line, bool StartsLine)
{
    private const char LineWithin = '\v';

    /// <summary>Without the end sign, and without the sign that a United States station needs maintenance.</summary>
    public string Bare => Text.TrimEnd('=', '$');

    /// <summary>All words of a text; marks of quoted mail and mark-up around them are passed over.</summary>
    public static List<ReportWord> Of(string text)
    {
        var words = new List<ReportWord>();
        var line = 0;
        using var reader = new StringReader(Plain(text));
        while (reader.ReadLine() is { } content)
        {
            line++;
            foreach (var part in content.Split(LineWithin))
            {
                var quoted = part.TrimStart(' ', '\t', '>', '|', '\u00A0', '\uFEFF', '*', '\u2022', '"', '`');
                var starts = true;
                foreach (var word in quoted.Replace("=", "= ", StringComparison.Ordinal).Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries))
                {
                    words.Add(new(word.ToUpperInvariant(), line, starts));
                    starts = false;
                }
            }
        }

        return words;
    }

    // Only what looks like a tag: "<" is in no report.
    private static string Plain(string text)
    {
        var signs = text.Replace('\u2212', '-').Replace('\u2013', '-');
        return signs.Contains('<', StringComparison.Ordinal)
            ? Tag().Replace(EndOfLine().Replace(signs, $"{LineWithin}"), " ").Replace("&nbsp;", " ", StringComparison.OrdinalIgnoreCase)
            : signs;
    }

    [GeneratedRegex(@"</?(?:br|p|div|tr|td|li|pre|code|h[1-6])\b[^<>\n]{0,200}>", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant)]
    private static partial Regex EndOfLine();

    [GeneratedRegex(@"</?[a-z!][^<>\n]{0,200}>", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant)]
    private static partial Regex Tag();
}
