using System.Text;

namespace DayBrief.Soundings.Formats.Csv;

/// <summary>One column whose header names a quantity that is known here.</summary>
internal sealed record CsvColumn(int Index, string Header, CsvQuantity Quantity, Func<double, double> ToBase)
{
    /// <summary>The header's quantity and unit; the unit null if it names none. Null if the quantity is not known.</summary>
    public static (CsvQuantity Quantity, string? Unit)? Meaning(string header)
    {
        var words = Words(WithoutRemark(header));
        var whole = string.Concat(words);
        if (CsvNames.QuantityWithUnit(whole) is { } withUnit)
        {
            return withUnit;
        }

        if (CsvNames.Quantity(whole) is { } bare)
        {
            return (bare, null);
        }

        for (var taken = 1; taken <= Math.Min(3, words.Count - 1); taken++)
        {
            var unit = string.Concat(words.TakeLast(taken));
            if (CsvNames.Quantity(string.Concat(words.SkipLast(taken))) is { } quantity
                && ((taken == 1 && quantity != CsvQuantity.Time) || CsvUnits.Conversion(quantity, unit) is not null))
            {
                return (quantity, unit);
            }
        }

        return null;
    }

    /// <summary>A cell as a unit; "" if it is none.</summary>
    public static string UnitOf(string cell) =>
        string.Concat(Words(cell)) is var unit && CsvUnits.IsUnit(unit) ? unit : "";

    /// <summary>The header without a bracket at its end that holds no unit, as in "T_C (computed)".</summary>
    private static string WithoutRemark(string header)
    {
        var open = header.AsSpan().LastIndexOfAny('(', '[');
        return open > 0 && header.TrimEnd() is [.., ')' or ']'] && UnitOf(header[open..]).Length == 0 ? header[..open] : header;
    }

    // "Pressure [hPa]", "pressure_hpa", "windSpeedKt", "T (°C)" all become words; camel case splits, so that "hPa" is
    // two words, which the caller joins again.
    private static List<string> Words(string header)
    {
        var words = new List<string>();
        var word = new StringBuilder();
        var lower = false;
        foreach (var c in header.Replace("°", " deg", StringComparison.Ordinal).Replace("%", " pct", StringComparison.Ordinal))
        {
            if (word.Length > 0 && (!char.IsLetterOrDigit(c) || (lower && char.IsUpper(c))))
            {
                words.Add(word.ToString());
                word.Clear();
            }

            if (char.IsLetterOrDigit(c))
            {
                word.Append(char.ToLowerInvariant(c));
            }

            lower = char.IsLower(c);
        }

        if (word.Length > 0)
        {
            words.Add(word.ToString());
        }

        return words;
    }
}
