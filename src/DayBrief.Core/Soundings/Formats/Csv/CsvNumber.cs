using System.Globalization;

namespace DayBrief.Soundings.Formats.Csv;

/// <summary>One cell as a number.</summary>
internal static class CsvNumber
{
    /// <summary>Null for a blank cell and the usual marks of a missing value.</summary>
    public static double? Read(ReadOnlySpan<char> cell, bool decimalComma, Origin origin)
    {
        if (TryRead(cell, decimalComma, out var value))
        {
            return value;
        }

        var text = cell.Trim();
        var shown = text.Length <= 30 ? text.ToString() : string.Concat(text[..30], "…");
        throw origin.Refuse("value-not-a-number", $"\"{shown}\" is not a number. Leave the cell blank where nothing was measured.");
    }

    /// <summary>False where a cell is neither a number nor a mark of a missing value.</summary>
    public static bool TryRead(ReadOnlySpan<char> cell, bool decimalComma, out double? value)
    {
        value = null;
        var text = cell.Trim();
        if (IsMissing(text))
        {
            return true;
        }

        Span<char> digits = stackalloc char[Math.Min(text.Length, 40)];
        if (text.Length > digits.Length)
        {
            return false;
        }

        text.CopyTo(digits);
        if (decimalComma && text.Count(',') == 1 && !text.Contains('.'))
        {
            digits[text.IndexOf(',')] = '.';
        }

        // A minus sign or an en dash from a word processor.
        if (text[0] is '\u2212' or '\u2013')
        {
            digits[0] = '-';
        }

        if (!double.TryParse(digits, NumberStyles.Float, CultureInfo.InvariantCulture, out var number) || !double.IsFinite(number))
        {
            return false;
        }

        value = IsFiller(number) ? null : number;
        return true;
    }

    /// <summary>Whether a word is a number or a mark of a missing value.</summary>
    public static bool IsFigure(string word) => TryRead(word, decimalComma: true, out _);

    /// <summary>Numbers that archives write where nothing was measured.</summary>
    private static bool IsFiller(double number) =>
        number is -999 or -999.9 or -9999 or -9999.9 or -8888 or -99999 or -999999 or 99999 or 999999 or 9999999 or -32768 or 32767 or >= 1e9 or <= -1e9;

    private static bool IsMissing(ReadOnlySpan<char> text) =>
        text.IsEmpty
        || text is "-" or "--" or "---" or "/" or "//" or "///" or "////" or "/////" or "*" or "***" or "****" or "*****" or "\u2013" or "\u2014"
        || text.Equals("NA", StringComparison.OrdinalIgnoreCase)
        || text.Equals("N/A", StringComparison.OrdinalIgnoreCase)
        || text.Equals("NaN", StringComparison.OrdinalIgnoreCase)
        || text.Equals("null", StringComparison.OrdinalIgnoreCase)
        || text.Equals("None", StringComparison.OrdinalIgnoreCase)
        || text.Equals("MSNG", StringComparison.OrdinalIgnoreCase)
        || text.Equals("M", StringComparison.OrdinalIgnoreCase);
}
