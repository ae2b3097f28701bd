namespace DayBrief.Logs.Igc;

/// <summary>Figures at fixed columns of one line; columns count from 1 and are inclusive, as in the specification.</summary>
internal static class IgcLine
{
    /// <summary>A whole number of digits only; null where a column holds anything else or is not there.</summary>
    public static int? Digits(ReadOnlySpan<byte> line, int from, int to)
    {
        if (to > line.Length)
            return null;
        var value = 0;
        for (var i = from - 1; i < to; i++)
        {
            var digit = line[i] - '0';
            if (digit is < 0 or > 9)
                return null;
            value = (10 * value) + digit;
        }

        return value;
    }

    /// <summary>A height of five characters, the first of which may be a minus sign.</summary>
    public static int? Height(ReadOnlySpan<byte> line, int from) =>
        from <= line.Length && line[from - 1] == '-' ? -Digits(line, from + 1, from + 4) : Digits(line, from, from + 4);

    public static char At(ReadOnlySpan<byte> line, int column) => column <= line.Length ? (char)line[column - 1] : '\0';
}
