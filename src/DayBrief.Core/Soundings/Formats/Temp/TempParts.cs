namespace DayBrief.Soundings.Formats.Temp;

/// <summary>Finds the parts of FM 35 and FM 32 reports in a text, between bulletin headings and whatever else.</summary>
internal static class TempParts
{
    private static readonly HashSet<string> Names = new(
        from kind in new[] { "TT", "UU", "II", "PP", "QQ", "EE" } from part in "ABCD" select $"{kind}{part}{part}",
        StringComparer.Ordinal);

    /// <summary>Signs that a page or a mail puts beside a group.</summary>
    private static readonly char[] Around = ['(', ')', '[', ']', '<', '>', '"', '\'', '`', '*', '|', ',', ';', ':', '\uFEFF'];

    /// <summary>Whether a part begins anywhere: its name with what opens its header after it.</summary>
    public static bool Any(string text)
    {
        for (var i = 0; i + 4 < text.Length; i++)
        {
            if (text[i + 2] == text[i + 3] && (text[i + 2] | 0x20) is >= 'a' and <= 'd'
                && Names.Contains(text.Substring(i, 4).ToUpperInvariant())
                && (i == 0 || text[i - 1] == '=' || Parts(text[i - 1])) && char.IsWhiteSpace(text[i + 4])
                && OpensHeader(text.AsSpan(i + 4, Math.Min(40, text.Length - i - 4)).TrimStart()))
            {
                return true;
            }
        }

        return false;
    }

    public static List<TempPart> Split(string text)
    {
        var parts = new List<TempPart>();
        TempPart? open = null;
        foreach (var (word, line) in Words(text))
        {
            var bare = word.TrimEnd('=', '$').ToUpperInvariant();
            if (Names.Contains(bare))
            {
                Close(open);
                parts.Add(open = new(bare, line));
            }
            else if (open is not null && !open.Ended)
            {
                Take(open, bare, word, line);
            }
        }

        return parts;
    }

    private static void Take(TempPart open, string bare, string word, int line)
    {
        // The first group may be a call sign that looks like a heading.
        if (open.Groups.Count > 0 && StartsHeading(bare))
        {
            open.Ended = true;
            return;
        }

        if (bare.Length > 0)
        {
            open.Groups.Add(new(bare, line));
        }

        open.Ended = word.AsSpan().ContainsAny('=', '$');
    }

    // Between two parts, "72235 TTBB" may repeat the station: it is no level of the part before.
    private static void Close(TempPart? open)
    {
        if (open is not null && !open.Ended)
        {
            open.Ended = true;
            if (open.Groups.Count > 3 && open.Groups[^1].Text == open.Groups[1].Text)
            {
                open.Groups.RemoveAt(open.Groups.Count - 1);
            }
        }
    }

    // TTAAii of an abbreviated heading (USUS44), or the marks around a telegram.
    private static bool StartsHeading(string word) =>
        word is "NNNN" or "ZCZC" || (word.Length is 6 && word.AsSpan(0, 4).IndexOfAnyExceptInRange('A', 'Z') < 0 && char.IsAsciiDigit(word[4]) && char.IsAsciiDigit(word[5]));

    private static IEnumerable<(string Word, int Line)> Words(string text)
    {
        var line = 1;
        var start = -1;
        for (var i = 0; i <= text.Length; i++)
        {
            var c = i < text.Length ? text[i] : '\n';
            if (Parts(c))
            {
                if (start >= 0)
                {
                    yield return (text[start..i], line);
                    start = -1;
                }

                line += c == '\n' ? 1 : 0;
            }
            else if (start < 0)
            {
                start = i;
            }
            else if (text[i - 1] == '=')
            {
                yield return (text[start..i], line);
                start = i;
            }
        }
    }

    private static bool Parts(char sign) => char.IsWhiteSpace(sign) || char.IsControl(sign) || Around.Contains(sign);

    // A date group, or a call sign and a date group.
    private static bool OpensHeader(ReadOnlySpan<char> rest) =>
        rest.Length >= 5 && IsGroup(rest[0]) && IsGroup(rest[1]) && IsGroup(rest[2]) && rest[..Math.Min(16, rest.Length)].ContainsAnyInRange('0', '9');

    private static bool IsGroup(char sign) => sign == '/' || char.IsAsciiLetterOrDigit(sign);
}
