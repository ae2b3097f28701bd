namespace DayBrief.Service.Languages;

/// <summary>A hole of an interpolated text: skips its expression, keeps its format.</summary>
internal static class SourceHole
{
    /// <summary>From just after the opening brace: ":0.0" or nothing, and the place after the closing brace.</summary>
    public static (string Format, int End) Read(string source, int at)
    {
        var depth = 0;
        while (true)
        {
            if (SourceLiterals.StartsLiteral(source, at))
            {
                at = SourceLiterals.Literal(source, at).End;
                continue;
            }

            switch (source[at])
            {
                case '(' or '[' or '{':
                    depth++;
                    break;
                case '}' when depth == 0:
                    return ("", at + 1);
                case ':' when depth == 0:
                    var end = source.IndexOf('}', at);
                    return (source[at..end], end + 1);
                case ')' or ']' or '}':
                    depth--;
                    break;
            }

            at = source[at] == '\'' ? SourceLiterals.AfterCharacter(source, at) : at + 1;
        }
    }
}
