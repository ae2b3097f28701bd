using DayBrief.Soundings.Formats;
using DayBrief.Soundings.Formats.Typed;
using DayBrief.Soundings.Quality;

namespace DayBrief.Soundings;

/// <summary>Reads an ascent of any supported format, which its content tells, never its name: detect, parse, levels
/// with their origin, quality control, merge.</summary>
public static class SoundingReader
{
    /// <summary>The formats that are read, most distinctive first.</summary>
    public static IReadOnlyList<SupportedFormat> Formats { get; } =
        [.. SoundingFormats.All.Select(format => format.Description)];

    /// <summary>Detects, parses, checks and merges one ascent; the first where the input holds several.</summary>
    /// <param name="content">The bytes of the file or text; at most 10 MB and 20,000 levels.</param>
    /// <param name="name">How to call the input in messages; not used to detect anything.</param>
    /// <exception cref="InvalidSoundingException">Not a sounding, or one that cannot be used.</exception>
    public static Sounding Read(ReadOnlyMemory<byte> content, string? name = null)
    {
        var ascents = Ascents(content, name);
        if (ascents.Count > 1)
        {
            ascents[0].Note("several-ascents", $"The input holds {ascents.Count} ascents; this is the first of them.");
        }

        return QualityControl.Pass(ascents[0]);
    }

    /// <summary>Every ascent of an input, in the order given.</summary>
    /// <param name="content">The bytes of the file or text; at most 10 MB and 20,000 levels an ascent.</param>
    /// <param name="name">How to call the input in messages.</param>
    /// <exception cref="InvalidSoundingException">Not a sounding, or one of them cannot be used.</exception>
    public static IReadOnlyList<Sounding> ReadAll(ReadOnlyMemory<byte> content, string? name = null) =>
        [.. Ascents(content, name).Select(QualityControl.Pass)];

    /// <summary>Checks and completes an ascent that somebody typed in.</summary>
    /// <exception cref="InvalidSoundingException">It cannot be used; the refusal names the field.</exception>
    public static Sounding Read(TypedSounding typed) => QualityControl.Pass(TypedLevels.Read(typed));

    private static IReadOnlyList<ReadAscent> Ascents(ReadOnlyMemory<byte> content, string? name)
    {
        var input = SoundingInput.Open(content, name);
        var format = SoundingFormats.All.FirstOrDefault(candidate => candidate.Recognises(input))
            ?? throw ForeignContent.Refuse(input);
        var ascents = format.Read(input);
        foreach (var ascent in ascents)
        {
            ascent.Source = ascent.Source with { Name = name ?? ascent.Source.Name };
        }

        return ascents;
    }
}
