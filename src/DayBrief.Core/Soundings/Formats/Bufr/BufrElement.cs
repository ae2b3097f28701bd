namespace DayBrief.Soundings.Formats.Bufr;

/// <summary>How an element's bits are to be taken.</summary>
internal enum BufrKind
{
    Number,
    Code,
    Text,
}

/// <summary>One row of Table B: value = (bits + reference)/10^scale.</summary>
internal sealed record BufrElement(BufrKind Kind, int Scale, int Reference, int Bits);
