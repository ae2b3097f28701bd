using System.Globalization;

namespace DayBrief.Soundings.Formats.Igra;

/// <summary>One line of an IGRA file, read by columns: the fields touch.</summary>
internal readonly record struct IgraLine(string Text, int Line)
{
    /// <summary>−9999 was never there, −8888 was removed by the archive's checks; both are not reported.</summary>
    public bool IsRemoved(int from, int to) => Slice(from, to) is "-8888";

    public bool IsHeader =>
        Text.Length >= 36 && Text[0] == '#' && Text[12] == ' ' && Slice(14, 17).Length == 4 && Whole(14, 17) is >= 1850 and <= 2200 && Whole(33, 36) is >= 0;

    /// <summary>Columns from and to are counted from 1 and inclusive, as in the format's description.</summary>
    public ReadOnlySpan<char> Slice(int from, int to)
    {
        var end = Math.Min(to, Text.Length);
        return from > end ? default : Text.AsSpan(from - 1, end - from + 1).Trim();
    }

    public int? Whole(int from, int to) =>
        int.TryParse(Slice(from, to), NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out var value) ? value : null;

    /// <summary>A value of a level; null where missing or removed.</summary>
    /// <exception cref="InvalidSoundingException">The columns hold no number.</exception>
    public double? Value(int from, int to, string field, double scale)
    {
        var text = Slice(from, to);
        if (text is "-9999" or "-8888" || text.IsEmpty)
        {
            return null;
        }

        return int.TryParse(text, NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out var value)
            ? value / scale
            : throw new Origin(Line, Field: field).Refuse("igra-field", $"columns {from} to {to} hold \"{text}\", which is no number.");
    }
}
