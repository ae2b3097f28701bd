using System.Globalization;

namespace DayBrief.Soundings.Formats.Csv;

/// <summary>One cell as a number.</summary>
internal static class CsvNumber
{
    /// <summary>Null for a blank cell and the usual marks of a missing value.</summary>
    public static double? Read(ReadOnlySpan<char> cell, bool decimalComma, Origin origin)
    {
        var text = cell.Trim();
        if (IsMissing(text))
        {
            return null;
        }

        Span<char> digits = stackalloc char[Math.Min(text.Length, 40)];
        if (text.Length <= digits.Length)
        {
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

            if (double.TryParse(digits, NumberStyles.Float, CultureInfo.InvariantCulture, out var value) && double.IsFinite(value))
            {
                return value;
            }
        }

        var shown = text.Length <= 30 ? text.ToString() : string.Concat(text[..30], "…");
        throw origin.Refuse("value-not-a-number", $"\"{shown}\" is not a number. Leave the cell blank where nothing was measured.");
    }

    private static bool IsMissing(ReadOnlySpan<char> text) =>
        text.IsEmpty
        || text is "-" or "--" or "/" or "//" or "///" or "/////" or "-9999" or "-9999.0" or "-999" or "-999.0"
        || text.Equals("NA", StringComparison.OrdinalIgnoreCase)
        || text.Equals("NaN", StringComparison.OrdinalIgnoreCase)
        || text.Equals("null", StringComparison.OrdinalIgnoreCase)
        || text.Equals("M", StringComparison.OrdinalIgnoreCase);
}
