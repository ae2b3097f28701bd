namespace DayBrief.Soundings.Formats.Bufr;

/// <summary>One decoded element.</summary>
/// <param name="Descriptor">F X Y as a number.</param>
/// <param name="Number">Null where missing, or a text.</param>
/// <param name="Text">Null where missing, or a number.</param>
/// <param name="ByteOffset">Where it stands.</param>
internal readonly record struct BufrValue(int Descriptor, double? Number, string? Text, long ByteOffset);
