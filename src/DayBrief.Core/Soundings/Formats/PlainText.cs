using System.Net;
using System.Text;

namespace DayBrief.Soundings.Formats;

/// <summary>What somebody pasted, without what the page or the mail put around it: mark-up, marks of quotation, fixed spaces.</summary>
internal static class PlainText
{
    private const int LongestTag = 4000;

    public static string Of(string text)
    {
        var plain = text.Replace('\u00A0', ' ').Replace('\u2007', ' ').Replace('\u202F', ' ').Replace("\u200B", "", StringComparison.Ordinal);
        plain = HasMarkup(plain) ? WebUtility.HtmlDecode(WithoutMarkup(plain)).Replace('\u00A0', ' ') : plain;
        return plain.Contains('>', StringComparison.Ordinal) ? Unquoted(plain) : plain;
    }

    private static bool HasMarkup(string text) =>
        text.Contains("</", StringComparison.Ordinal)
        || text.Contains("<br", StringComparison.OrdinalIgnoreCase)
        || text.Contains("<pre", StringComparison.OrdinalIgnoreCase);

    private static string WithoutMarkup(string text)
    {
        var plain = new StringBuilder(text.Length);
        var inRow = false;
        for (var i = 0; i < text.Length; i++)
        {
            if (text[i] == '<' && TagEnd(text, i) is var end and > 0)
            {
                var name = Name(text.AsSpan(i + 1, end - i - 1), out var closes);
                i = !closes && name is "script" or "style" ? Skip(text, end, name) : end;
                inRow = name == "tr" ? !closes : inRow && name != "table";
                plain.Append(Instead(name, closes, plain, i + 1 < text.Length ? text[i + 1] : '\n'));
            }
            else
            {
                plain.Append(inRow && text[i] is '\r' or '\n' ? ' ' : text[i]);
            }
        }

        return plain.ToString();
    }

    // Cells of a table become tab-separated; blocks begin a line of their own where none begins anyway.
    private static string Instead(string name, bool closes, StringBuilder before, char after) => name switch
    {
        "td" or "th" => closes ? "\t" : "",
        "tr" => closes ? "\n" : "",
        "br" or "p" or "div" or "li" or "pre" or "h1" or "h2" or "h3" or "h4" or "h5" or "h6" or "body" or "title" =>
            (before.Length == 0 || before[^1] == '\n') || after is '\r' or '\n' ? "" : "\n",
        _ => "",
    };

    private static int TagEnd(string text, int start)
    {
        if (start + 1 >= text.Length || !(char.IsAsciiLetter(text[start + 1]) || text[start + 1] is '/' or '!'))
        {
            return -1;
        }

        var length = Math.Min(LongestTag, text.Length - start);
        var end = text.AsSpan(start + 1, length - 1).IndexOfAny('>', '<');
        return end >= 0 && text[start + 1 + end] == '>' ? start + 1 + end : -1;
    }

    private static string Name(ReadOnlySpan<char> tag, out bool closes)
    {
        closes = tag is ['/', ..];
        var name = closes ? tag[1..] : tag;
        var end = 0;
        while (end < name.Length && char.IsAsciiLetterOrDigit(name[end]))
        {
            end++;
        }

        return name[..end].ToString().ToLowerInvariant();
    }

    private static int Skip(string text, int from, string name)
    {
        var close = text.IndexOf($"</{name}", from, StringComparison.OrdinalIgnoreCase);
        return close < 0 ? text.Length - 1 : Math.Max(from, text.IndexOf('>', close) is var end and >= 0 ? end : text.Length - 1);
    }

    private static string Unquoted(string text)
    {
        var plain = new StringBuilder(text.Length);
        var atStart = true;
        for (var i = 0; i < text.Length; i++)
        {
            if (atStart && Quote(text, i) is var end and > 0)
            {
                i = end;
                atStart = i >= text.Length;
                if (i >= text.Length)
                {
                    break;
                }
            }

            plain.Append(text[i]);
            atStart = text[i] == '\n';
        }

        return plain.ToString();
    }

    // "> ", ">> " and "> > ": the index after them; at most one space of each belongs to the mark.
    private static int Quote(string text, int start)
    {
        var i = start;
        while (i < text.Length && text[i] is ' ' && i - start < 4)
        {
            i++;
        }

        if (i >= text.Length || text[i] != '>')
        {
            return -1;
        }

        while (i < text.Length && text[i] == '>')
        {
            i += i + 1 < text.Length && text[i + 1] == ' ' ? 2 : 1;
        }

        return i;
    }
}
