using System.Globalization;

namespace DayBrief.Soundings.Formats.Bufr;

/// <summary>F X Y: an element (0), a replication (1), an operator (2) or a sequence (3).</summary>
internal readonly record struct BufrDescriptor(int F, int X, int Y)
{
    /// <summary>As one number of six figures.</summary>
    public int Number => (100_000 * F) + (1000 * X) + Y;

    public static BufrDescriptor FromOctets(byte first, byte second) => new(first >> 6, first & 63, second);

    public static BufrDescriptor Parse(int number) => new(number / 100_000, number / 1000 % 100, number % 1000);

    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{F} {X:00} {Y:000}");
}
