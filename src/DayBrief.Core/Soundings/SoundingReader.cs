using DayBrief.Soundings.Formats;
using DayBrief.Soundings.Formats.Typed;
using DayBrief.Soundings.Quality;
using DayBrief.Texts;

namespace DayBrief.Soundings;

/// <summary>Reads an ascent of any supported format, which its content tells, never its name: detect, parse, levels
/// with their origin, quality control, merge.</summary>
public static class SoundingReader
{
    /// <summary>The formats that are read, most distinctive first.</summary>
    public static IReadOnlyList<SupportedFormat> Formats { get; } =
        [.. SoundingFormats.All.Select(format => format.Description)];

    /// <summary>Detects, parses, checks and merges one ascent; the first that can be used where the input holds several.</summary>
    /// <param name="content">The bytes of the file or text; at most 10 MB and 20,000 levels an ascent.</param>
    /// <param name="name">How to call the input in messages; not used to detect anything.</param>
    /// <exception cref="InvalidSoundingException">Not a sounding, or none that can be used.</exception>
    public static Sounding Read(ReadOnlyMemory<byte> content, string? name = null) => FirstUsable(Ascents(content, name));

    /// <summary>The ascent nearest to a time; one without a time counts as furthest.</summary>
    /// <param name="content">The bytes of the file or text.</param>
    /// <param name="name">How to call the input in messages.</param>
    /// <param name="nearestTo">The time wanted.</param>
    /// <exception cref="InvalidSoundingException">Not a sounding, or none that can be used.</exception>
    public static Sounding Read(ReadOnlyMemory<byte> content, string? name, DateTimeOffset nearestTo) => FirstUsable(
        [.. Ascents(content, name).OrderBy(ascent => ascent.Source.ValidAt is { } time ? (time - nearestTo).Duration() : TimeSpan.MaxValue)]);

    /// <summary>The ascent with a number.</summary>
    /// <param name="content">The bytes of the file or text.</param>
    /// <param name="name">How to call the input in messages.</param>
    /// <param name="index">From 0, in the order of <see cref="Contents"/>.</param>
    /// <exception cref="ArgumentOutOfRangeException">The input holds no such ascent.</exception>
    /// <exception cref="InvalidSoundingException">Not a sounding, or one that cannot be used.</exception>
    public static Sounding Read(ReadOnlyMemory<byte> content, string? name, int index)
    {
        var ascents = Ascents(content, name);
        return index >= 0 && index < ascents.Count
            ? QualityControl.Pass(ascents[index])
            : throw new ArgumentOutOfRangeException(nameof(index), index, $"The input holds {ascents.Count} ascents.");
    }

    /// <summary>What ascents an input holds, for somebody to choose from; they are not checked yet.</summary>
    /// <exception cref="InvalidSoundingException">Not a sounding.</exception>
    public static IReadOnlyList<SoundingSource> Contents(ReadOnlyMemory<byte> content, string? name = null) =>
        [.. Ascents(content, name).Select(ascent => ascent.Source)];

    /// <summary>Every ascent of an input that can be used, in the order given.</summary>
    /// <param name="content">The bytes of the file or text.</param>
    /// <param name="name">How to call the input in messages.</param>
    /// <exception cref="InvalidSoundingException">Not a sounding, or none that can be used.</exception>
    public static IReadOnlyList<Sounding> ReadAll(ReadOnlyMemory<byte> content, string? name = null)
    {
        var refusals = new List<Refusal>();
        var usable = Ascents(content, name).Select(ascent => Attempt(ascent, refusals)).OfType<Sounding>().ToList();
        return usable.Count > 0 ? usable : throw new InvalidSoundingException(refusals[0]);
    }

    /// <summary>Checks and completes an ascent that somebody typed in.</summary>
    /// <exception cref="InvalidSoundingException">It cannot be used; the refusal names the field.</exception>
    public static Sounding Read(TypedSounding typed)
    {
        ArgumentNullException.ThrowIfNull(typed);
        return QualityControl.Pass(TypedLevels.Read(typed));
    }

    private static Sounding FirstUsable(IReadOnlyList<ReadAscent> ascents)
    {
        var refusals = new List<Refusal>();
        for (var i = 0; i < ascents.Count; i++)
        {
            if (ascents.Count > 1)
            {
                ascents[i].Note("several-ascents", i == 0
                    ? Words.Of($"The input holds {ascents.Count} ascents; this one is taken.")
                    : Words.Of($"The input holds {ascents.Count} ascents; this one is taken, because {i} before it cannot be used."));
            }

            if (Attempt(ascents[i], refusals) is { } sounding)
            {
                return sounding;
            }
        }

        throw new InvalidSoundingException(refusals[0]);
    }

    private static Sounding? Attempt(ReadAscent ascent, List<Refusal> refusals)
    {
        try
        {
            return QualityControl.Pass(ascent);
        }
        catch (InvalidSoundingException refused)
        {
            refusals.AddRange(refused.Refusals);
            return null;
        }
    }

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
