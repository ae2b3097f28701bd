namespace DayBrief.Soundings.Formats.Igra;

/// <summary>IGRA version 2: one or many ascents of a station.</summary>
internal static class IgraFile
{
    public static SoundingFormat Format { get; } = new(
        new(IgraSounding.FormatName, "NOAA NCEI, Integrated Global Radiosonde Archive, version 2", "#USM00072403 2016 10 06 12 1103 …"),
        input => input.Text is { } text && Lines(text).Take(50).Any(line => line.IsHeader),
        input => Read(input.Text!));

    private static List<ReadAscent> Read(string text)
    {
        var ascents = new List<ReadAscent>();
        IgraSounding? open = null;
        foreach (var line in Lines(text))
        {
            if (line.IsHeader)
            {
                Close(open, ascents);
                open = new(line);
            }
            else if (open is not null && open.Count < open.Expected && line.Text.AsSpan().Trim().Length > 0)
            {
                Level(open, line);
            }
        }

        Close(open, ascents);
        return ascents;
    }

    private static void Level(IgraSounding open, IgraLine line)
    {
        // The shortest level ends with the wind at column 51; editors cut the blanks after it, nothing else.
        if (line.Slice(1, 2).Length < 2 || line.Text.Length < 39)
        {
            throw new Origin(line.Line).Refuse("igra-line", "this line is no level of an IGRA ascent: it is too short or shifted. The format goes by columns.");
        }

        open.Add(line);
    }

    private static void Close(IgraSounding? open, List<ReadAscent> ascents)
    {
        if (open is not null)
        {
            ascents.Add(open.Close());
        }
    }

    private static IEnumerable<IgraLine> Lines(string text)
    {
        var number = 0;
        using var reader = new StringReader(text);
        while (reader.ReadLine() is { } line)
        {
            yield return new(line, ++number);
        }
    }
}
