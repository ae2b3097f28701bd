using DayBrief.Soundings.Formats.Csv;
using DayBrief.Soundings.Formats.Listing;
using DayBrief.Texts;

namespace DayBrief.Soundings.Formats;

/// <summary>For a text that is in no known format: which one it comes nearest to, and what keeps it from being it.</summary>
internal static class NearestForm
{
    private const int LinesLookedAt = 2000;

    /// <summary>Null where it comes near to none.</summary>
    public static (Words Why, int Line)? Of(string text)
    {
        (int Line, int Figures) first = default;
        var rows = 0;
        foreach (var (line, number) in Lines(text))
        {
            if (Named(line) is { } why)
            {
                return (why, number);
            }

            var figures = Cells(line) is { Count: >= 3 } cells && cells.TrueForAll(CsvNumber.IsFigure) ? cells.Count : 0;
            first = figures > 0 && rows == 0 ? (number, figures) : first;
            rows += figures > 0 ? 1 : 0;
        }

        return rows >= 3
            ? (Words.Of($"It looks like a table: from line {first.Line} on {rows} lines hold {first.Figures} figures or so, but no line above them names the columns. Write one such as pressure_hpa height_m temperature_c dewpoint_c wind_dir_deg wind_speed_kt."), first.Line)
            : null;
    }

    /// <summary>The beginning that tells most: no rule of dashes, no blank.</summary>
    public static string Beginning(string text)
    {
        var line = Lines(text).Select(entry => entry.Line.Trim()).FirstOrDefault(line => line.Any(char.IsLetterOrDigit)) ?? "";
        return line.Length <= 40 ? line : string.Concat(line.AsSpan(0, 40), "…");
    }

    private static Words? Named(string line)
    {
        var words = ListingColumn.Split(line, spaces: 1).ConvertAll(word => word.Name.Trim('>', '*', '"'));
        if (words.Count > 0 && words[0].Length == 4 && words[0][2] == words[0][3] && words[0][..2].ToUpperInvariant() is "TT" or "PP" or "UU" or "II")
        {
            return Words.Of($"It looks like FM 35 TEMP: after {words[0].ToUpperInvariant()} day and hour (five figures) and the station are expected, here stands \"{Next(words)}\".");
        }

        if (words.Count >= 2 && words[0] is "BUFR")
        {
            return Words.Of($"It looks like BUFR that was copied as text. Give the file itself: as text it is damaged.");
        }

        var cells = Cells(line);
        var known = cells.Select(CsvColumn.Meaning).Where(meaning => meaning is not null).Select(meaning => meaning!.Value.Quantity).Distinct().ToList();
        if (known.Count < 2 || 2 * known.Count < cells.Count || cells.Count > 40)
        {
            return null;
        }

        var isPlaced = known.Contains(CsvQuantity.Pressure) || known.Contains(CsvQuantity.Height) || known.Contains(CsvQuantity.HeightAboveGround);
        return !known.Contains(CsvQuantity.Temperature) ? Words.Of($"It looks like a table whose header names no temperature. Name it for instance temperature_c.")
            : !isPlaced ? Words.Of($"It looks like a table whose header names neither pressure nor height. Name it for instance pressure_hpa.")
            : Words.Of($"It looks like the header of a table, but no line of figures follows it.");
    }

    private static string Next(List<string> words) => words.Count < 2 ? "" : words[1].Length <= 12 ? words[1] : words[1][..12];

    private static List<string> Cells(string line)
    {
        var delimiter = "\t;|,".FirstOrDefault(mark => line.Contains(mark, StringComparison.Ordinal));
        return delimiter == default
            ? ListingColumn.Split(line, spaces: 1).ConvertAll(word => word.Name)
            : [.. line.Split(delimiter, StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries).Select(cell => cell.Trim('"'))];
    }

    private static IEnumerable<(string Line, int Number)> Lines(string text)
    {
        using var reader = new StringReader(text);
        for (var number = 1; number <= LinesLookedAt && reader.ReadLine() is { } line; number++)
        {
            yield return (line.Length > 600 ? line[..600] : line, number);
        }
    }
}
