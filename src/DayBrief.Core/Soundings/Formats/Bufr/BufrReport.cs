namespace DayBrief.Soundings.Formats.Bufr;

/// <summary>WMO FM 94 BUFR, editions 3 and 4, vertical soundings.</summary>
internal static class BufrReport
{
    public static SoundingFormat Format { get; } = new(
        new(BufrAscent.FormatName, "WMO-No. 306, FM 94 BUFR, editions 3 and 4", "binary, begins BUFR, ends 7777"),
        input => BufrMessage.Find(input.Bytes.Span, 0) >= 0,
        input => Read(input.Bytes, new()));

    internal const int MostRefused = 100;

    internal static List<ReadAscent> Read(ReadOnlyMemory<byte> bytes, BufrBudget budget)
    {
        var ascents = new List<ReadAscent>();
        var refused = new List<Refusal>();
        for (var at = BufrMessage.Find(bytes.Span, 0); at >= 0 && refused.Count < MostRefused;)
        {
            at = BufrMessage.Find(bytes.Span, at + Message(bytes, at, budget, ascents, refused));
        }

        var distinct = BufrMerge.OfOneLaunch(ascents);
        if (distinct.Count == 0)
        {
            throw new InvalidSoundingException(refused.Count > 0 ? refused[0] : new Refusal("bufr-empty", "The BUFR messages hold no level."));
        }

        if (refused.Count > 0)
        {
            distinct[0].Warn("message-left-out", $"{refused.Count} message(s) of the input cannot be read; the first: {refused[0].Message}");
        }

        return distinct;
    }

    /// <summary>Takes one message, and returns how far to go on from its beginning.</summary>
    private static int Message(ReadOnlyMemory<byte> bytes, int at, BufrBudget budget, List<ReadAscent> ascents, List<Refusal> refused)
    {
        try
        {
            var message = BufrMessage.Open(bytes, at);
            ascents.AddRange(BufrDecoder.Decode(message, budget)
                .Select(values => BufrAscent.Read(values, message.Time))
                .Where(ascent => ascent.Levels.Count > 0 || ascent.WindsByHeight.Count > 0));
            return message.Length;
        }
        catch (InvalidSoundingException error)
        {
            refused.Add(error.Refusals[0]);
            return 4;
        }
    }
}
