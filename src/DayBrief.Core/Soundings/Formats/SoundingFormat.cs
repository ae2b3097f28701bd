namespace DayBrief.Soundings.Formats;

/// <summary>One format: how its content is recognised and read.</summary>
/// <param name="Description">What it is, for messages and documents.</param>
/// <param name="Recognises">Whether an input is in this format; by content, cheap, throws nothing.</param>
/// <param name="Read">Every ascent in it, at least one; <see cref="InvalidSoundingException"/> if none can be read.</param>
internal sealed record SoundingFormat(
    SupportedFormat Description,
    Func<SoundingInput, bool> Recognises,
    Func<SoundingInput, IReadOnlyList<ReadAscent>> Read);
