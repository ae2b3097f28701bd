namespace DayBrief.Soundings.Formats.Bufr;

/// <summary>Invented messages of station 10999, 2026-06-21 06:00 UTC, 48.12345 N 8.54321 E.</summary>
internal static class BufrSamples
{
    /// <summary>Template 3 09 052 with seven levels 970, 910 … 610 hPa, temperatures 14.85, 11.35 … °C.</summary>
    public static byte[] Ascent()
    {
        var bits = new BufrWriter();
        bits.Write(10, 7);
        bits.Write(999, 10);
        bits.Missing(95);
        Launch(bits);
        bits.Missing(45 + 15);
        bits.Write(7, 16);
        for (var i = 0; i < 7; i++)
        {
            Write(bits, (8192 + (200 * i), 15), (0, 18), (9700 - (600 * i), 14), (1350 + (550 * i), 17), (9_000_000, 25), (18_000_000, 26));
            Write(bits, (28_800 - (350 * i), 16), (28_300 - (450 * i), 16));
            bits.Missing(9 + 12);
        }

        bits.Write(0, 8);
        return bits.Message(1, compressed: false, 309052);
    }

    /// <summary>Template 3 09 050 with winds at 910 (240°, 5.0 m/s) and 800 hPa (250°, 7.0 m/s).</summary>
    public static byte[] WindsByPressure()
    {
        var bits = Winds();
        Write(bits, (8392, 15), (0, 18), (9100, 14), (9_000_000, 25), (18_000_000, 26), (240, 9), (50, 12));
        Write(bits, (8592, 15), (0, 18), (8000, 14), (9_000_000, 25), (18_000_000, 26), (250, 9), (70, 12));
        bits.Write(0, 8);
        return bits.Message(1, compressed: false, 309050);
    }

    /// <summary>Template 3 09 051 with winds at 900 and 2,000 gpm.</summary>
    public static byte[] WindsByHeight()
    {
        var bits = Winds();
        Write(bits, (8392, 15), (0, 18), (1900, 17), (9_000_000, 25), (18_000_000, 26), (240, 9), (50, 12));
        Write(bits, (8592, 15), (0, 18), (3000, 17), (9_000_000, 25), (18_000_000, 26), (250, 9), (70, 12));
        bits.Write(0, 8);
        return bits.Message(1, compressed: false, 309051);
    }

    private static BufrWriter Winds()
    {
        var bits = new BufrWriter();
        bits.Write(10, 7);
        bits.Write(999, 10);
        bits.Missing(72 + 8 + 7 + 4);
        Launch(bits);
        bits.Write(2, 16);
        return bits;
    }

    private static void Launch(BufrWriter bits) => Write(
        bits, (18, 5), (2026, 12), (6, 4), (21, 6), (6, 5), (0, 6), (0, 6), (13_812_345, 25), (18_854_321, 26), (8310, 17), (8325, 17), (1434, 17), (1, 4));

    private static void Write(BufrWriter writer, params (long Value, int Bits)[] values)
    {
        foreach (var (value, bits) in values)
        {
            writer.Write(value, bits);
        }
    }
}
