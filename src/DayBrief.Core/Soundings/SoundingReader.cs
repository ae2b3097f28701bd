namespace DayBrief.Soundings;

/// <summary>Reads an ascent of any supported format, which its content tells, never its name.</summary>
public static class SoundingReader
{
    /// <summary>Detects, parses, checks and merges one ascent.</summary>
    /// <param name="content">The bytes of the file or text.</param>
    /// <param name="name">How to call the input in messages; not used to detect anything.</param>
    /// <exception cref="InvalidSoundingException">Not a sounding, or one that cannot be used.</exception>
    public static Sounding Read(ReadOnlyMemory<byte> content, string? name = null) =>
        throw new InvalidSoundingException(new Refusal("not-recognised", $"{name ?? "The input"} ({content.Length} bytes) is in no format that is known here."));
}
