namespace DayBrief.Soundings.Formats;

/// <summary>The bytes of an input, and its text where it is text.</summary>
internal sealed class SoundingInput
{
    private SoundingInput(ReadOnlyMemory<byte> bytes, string? name, string? text)
    {
        Bytes = bytes;
        Name = name;
        Text = text;
    }

    public ReadOnlyMemory<byte> Bytes { get; }

    public string? Name { get; }

    /// <summary>Null for binary content.</summary>
    public string? Text { get; }

    /// <summary>The text without mark-up and marks of quotation around it; null for binary content.</summary>
    public string? Plain => field ??= Text is null ? null : PlainText.Of(Text);

    /// <summary>Refuses what is empty or too large, and decodes text.</summary>
    public static SoundingInput Open(ReadOnlyMemory<byte> bytes, string? name)
    {
        if (bytes.Length > SoundingLimits.Bytes)
        {
            throw new InvalidSoundingException(new Refusal(
                "too-large",
                $"The input has {bytes.Length / 1048576.0:0.0} MB; at most {SoundingLimits.Bytes / 1048576} MB are read. Give one ascent."));
        }

        var text = TextDecoding.Decode(bytes.Span);
        return text is null || !string.IsNullOrWhiteSpace(text)
            ? new(bytes, name, text)
            : throw new InvalidSoundingException(new Refusal("empty", "The input is empty. Paste or upload an ascent."));
    }
}
