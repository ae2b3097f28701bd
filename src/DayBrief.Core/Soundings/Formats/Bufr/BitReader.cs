namespace DayBrief.Soundings.Formats.Bufr;

/// <summary>Reads numbers of any width from a stream of bits, most significant first.</summary>
internal sealed class BitReader(ReadOnlyMemory<byte> bytes, long firstByteOffset)
{
    private long _bit;

    /// <summary>Where the next bit stands in the whole input.</summary>
    public long ByteOffset => firstByteOffset + (_bit / 8);

    public long BitsLeft => (8L * bytes.Length) - _bit;

    /// <summary>0 to 64 bits.</summary>
    /// <exception cref="InvalidSoundingException">The data end before.</exception>
    public ulong Read(int bits)
    {
        if (bits > BitsLeft)
        {
            throw new Origin(ByteOffset: ByteOffset).Refuse("bufr-data-end", "the data section ends inside a value. The message is damaged or cut.");
        }

        var span = bytes.Span;
        ulong value = 0;
        while (bits > 0)
        {
            var left = 8 - (int)(_bit % 8);
            var taken = Math.Min(left, bits);
            var part = (span[(int)(_bit / 8)] >> (left - taken)) & ((1 << taken) - 1);
            value = (value << taken) | (uint)part;
            _bit += taken;
            bits -= taken;
        }

        return value;
    }

    public void Skip(long bits)
    {
        for (; bits > 0; bits -= 64)
        {
            Read((int)Math.Min(bits, 64));
        }
    }
}
