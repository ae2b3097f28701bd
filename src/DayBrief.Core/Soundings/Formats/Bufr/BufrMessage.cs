using System.Buffers.Binary;

namespace DayBrief.Soundings.Formats.Bufr;

/// <summary>The frame of one message: sections 0 to 5.</summary>
/// <remarks>[WMO306] volume I.2, FM 94 regulations.</remarks>
internal sealed class BufrMessage
{
    public required long Offset { get; init; }

    /// <summary>Time of section 1; null where it is no date.</summary>
    public required DateTimeOffset? Time { get; init; }

    public required int Subsets { get; init; }

    public required bool IsCompressed { get; init; }

    public required IReadOnlyList<BufrDescriptor> Descriptors { get; init; }

    /// <summary>The bit stream of section 4, and where it begins.</summary>
    public required ReadOnlyMemory<byte> Data { get; init; }

    public required long DataOffset { get; init; }

    /// <summary>Length of the whole message.</summary>
    public required int Length { get; init; }

    /// <summary>The next place that begins like a message; −1 if none.</summary>
    public static int Find(ReadOnlySpan<byte> bytes, int from)
    {
        while (from < bytes.Length && bytes[from..].IndexOf("BUFR"u8) is >= 0 and var found)
        {
            from += found;
            if (from + 8 <= bytes.Length && bytes[from + 7] <= 9)
            {
                return from;
            }

            from += 4;
        }

        return -1;
    }

    public static BufrMessage Open(ReadOnlyMemory<byte> input, int offset)
    {
        var length = Number(input.Span, offset + 4, 3, offset);
        var edition = input.Span[offset + 7];
        if (edition is not (3 or 4))
        {
            throw At(offset + 7).Refuse("bufr-edition", $"BUFR edition {edition}; editions 3 and 4 are read.");
        }

        if (length < 20 || offset + length > input.Length)
        {
            throw At(offset + 4).Refuse("bufr-cut", $"the message is {length} bytes long and the input holds {input.Length - offset} of them. It is damaged or cut.");
        }

        var message = input.Slice(offset, length);
        if (!message.Span[^4..].SequenceEqual("7777"u8))
        {
            throw At(offset + length - 4).Refuse("bufr-end", "the message does not end in 7777. It is damaged.");
        }

        return Sections(message, edition, offset);
    }

    private static BufrMessage Sections(ReadOnlyMemory<byte> message, int edition, int offset)
    {
        var bytes = message.Span;
        var at = 8;
        var first = Section(bytes, at, edition == 4 ? 22 : 17, offset);
        var hasSecond = (bytes[at + (edition == 4 ? 9 : 7)] & 0x80) != 0;
        var time = Date(bytes.Slice(at, first), edition);
        at += first;
        at += hasSecond ? Section(bytes, at, 4, offset) : 0;
        var third = Section(bytes, at, 9, offset);
        var descriptors = new List<BufrDescriptor>();
        for (var i = at + 7; i + 1 < at + third; i += 2)
        {
            descriptors.Add(BufrDescriptor.FromOctets(bytes[i], bytes[i + 1]));
        }

        var (subsets, flags) = (Number(bytes, at + 4, 2, offset), bytes[at + 6]);
        at += third;
        var fourth = Section(bytes, at, 4, offset);
        return new()
        {
            Offset = offset,
            Time = time,
            Subsets = subsets,
            IsCompressed = (flags & 0x40) != 0,
            Descriptors = descriptors,
            Data = message.Slice(at + 4, fourth - 4),
            DataOffset = offset + at + 4,
            Length = message.Length,
        };
    }

    private static int Section(ReadOnlySpan<byte> bytes, int at, int least, int offset)
    {
        var length = Number(bytes, at, 3, offset);
        return length >= least && at + length <= bytes.Length - 4
            ? length
            : throw At(offset + at).Refuse("bufr-section", $"a section of {length} bytes does not fit here. The message is damaged.");
    }

    private static int Number(ReadOnlySpan<byte> bytes, int at, int octets, int offset)
    {
        if (at + octets > bytes.Length)
        {
            throw At(offset + at).Refuse("bufr-cut", "the message ends here. It is damaged or cut.");
        }

        Span<byte> whole = stackalloc byte[4];
        bytes.Slice(at, octets).CopyTo(whole[(4 - octets)..]);
        return BinaryPrimitives.ReadInt32BigEndian(whole);
    }

    private static DateTimeOffset? Date(ReadOnlySpan<byte> section, int edition)
    {
        // Edition 3 has the year of the century, and the centuries meet between 1950 and 2049.
        var year = edition == 4 ? (section[15] << 8) + section[16] : section[12] % 100 is var yy && yy < 50 ? 2000 + yy : 1900 + yy;
        var at = edition == 4 ? 17 : 13;
        return BufrTime.Of(year, section[at], section[at + 1], section[at + 2], section[at + 3], edition == 4 ? section[at + 4] : 0);
    }

    private static Origin At(long offset) => new(ByteOffset: offset);
}
