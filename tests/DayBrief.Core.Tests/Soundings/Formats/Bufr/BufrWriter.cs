namespace DayBrief.Soundings.Formats.Bufr;

/// <summary>Writes messages for tests: a stream of bits, and the frame around it.</summary>
internal sealed class BufrWriter
{
    private readonly List<byte> _bytes = [];
    private int _free;

    public static BufrWriter Of(params (long Value, int Bits)[] values)
    {
        var writer = new BufrWriter();
        foreach (var (value, bits) in values)
        {
            writer.Write(value, bits);
        }

        return writer;
    }

    public void Write(long value, int bits)
    {
        for (var bit = bits - 1; bit >= 0; bit--)
        {
            if (_free == 0)
            {
                _bytes.Add(0);
                _free = 8;
            }

            _free--;
            _bytes[^1] |= (byte)(((bit < 63 ? value >> bit : 0) & 1) << _free);
        }
    }

    /// <summary>All ones.</summary>
    public void Missing(int bits)
    {
        for (; bits > 0; bits--)
        {
            Write(1, 1);
        }
    }

    /// <summary>An edition-4 message of 2026-06-21 06:00 with these descriptors (six figures) around the stream.</summary>
    public byte[] Message(int subsets, bool compressed, params int[] descriptors)
    {
        byte[] first = [0, 0, 22, 0, 0, 255, 0, 0, 0, 0, 2, 4, 0, 32, 0, 0x07, 0xEA, 6, 21, 6, 0, 0];
        List<byte> third = [0, 0, (byte)(7 + (2 * descriptors.Length)), 0, (byte)(subsets >> 8), (byte)subsets, (byte)(compressed ? 0xC0 : 0x80)];
        foreach (var descriptor in descriptors)
        {
            third.Add((byte)(((descriptor / 100_000) << 6) + (descriptor / 1000 % 100)));
            third.Add((byte)(descriptor % 1000));
        }

        byte[] fourth = [.. Three(4 + _bytes.Count), 0, .. _bytes];
        var length = 8 + first.Length + third.Count + fourth.Length + 4;
        return [.. "BUFR"u8, .. Three(length), 4, .. first, .. third, .. fourth, .. "7777"u8];
    }

    private static byte[] Three(int value) => [(byte)(value >> 16), (byte)(value >> 8), (byte)value];
}
