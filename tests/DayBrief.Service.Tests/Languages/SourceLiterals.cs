using System.Globalization;
using System.Text;

namespace DayBrief.Service.Languages;

/// <summary>Reads string literals out of C# and Razor, as far as texts to be said are written.</summary>
internal static class SourceLiterals
{
    /// <summary>The literals between a bracket that has just been opened and its closing one, not those within nested brackets.</summary>
    public static IEnumerable<string> Directly(string source, int at)
    {
        var depth = 0;
        while (at < source.Length)
        {
            if (StartsLiteral(source, at))
            {
                var (text, end) = Literal(source, at);
                if (depth == 0 && text is not null)
                    yield return text;
                at = end;
                continue;
            }

            if (source[at] is '(' or '[' or '{')
                depth++;
            else if (source[at] is ')' or ']' or '}' && depth-- == 0)
                yield break;
            at = source[at] == '\'' ? AfterCharacter(source, at) : at + 1;
        }
    }

    internal static bool StartsLiteral(string source, int at)
    {
        var quote = at;
        while (quote < source.Length && quote < at + 2 && source[quote] is '$' or '@')
            quote++;
        return quote < source.Length && source[quote] == '"';
    }

    /// <summary>The text of a literal and the place after it; null for a raw one, which no text may be.</summary>
    internal static (string? Text, int End) Literal(string source, int at)
    {
        var quote = source.IndexOf('"', at);
        if (string.CompareOrdinal(source, quote, "\"\"\"", 0, 3) == 0)
            return (null, source.IndexOf("\"\"\"", quote + 3, StringComparison.Ordinal) + 3);
        var (interpolated, verbatim) = (source[at..quote].Contains('$'), source[at..quote].Contains('@'));
        var text = new StringBuilder();
        var holes = 0;
        at = quote + 1;
        while (source[at] != '"' || (verbatim && source[at + 1] == '"'))
        {
            if (interpolated && source[at] == '{' && source[at + 1] != '{')
            {
                (var format, at) = SourceHole.Read(source, at + 1);
                text.Append(CultureInfo.InvariantCulture, $"{{{holes++}{format}}}");
                continue;
            }

            var (piece, length) = Piece(source, at, verbatim, interpolated);
            text.Append(piece);
            at += length;
        }

        return (text.ToString(), at + 1);
    }

    /// <summary>A character literal is skipped, since it may hold a quote or a bracket; an apostrophe in Razor's text is not one.</summary>
    internal static int AfterCharacter(string source, int at)
    {
        var close = at + (source[at + 1] == '\\' ? 3 : 2);
        return close < source.Length && source[close] == '\'' ? close + 1 : at + 1;
    }

    private static (string Text, int Length) Piece(string source, int at, bool verbatim, bool interpolated) => source[at] switch
    {
        '"' => ("\"", 2),
        '{' or '}' when interpolated => (new string(source[at], 2), 2),
        '\\' when !verbatim && source[at + 1] == 'u' => (((char)int.Parse(source.AsSpan(at + 2, 4), NumberStyles.HexNumber, CultureInfo.InvariantCulture)).ToString(), 6),
        '\\' when !verbatim => (source[at + 1] == 'n' ? "\n" : source[at + 1].ToString(), 2),
        var other => (other.ToString(), 1),
    };
}
