using DayBrief.Texts;
using DayBrief.Units;

namespace DayBrief.Soundings;

/// <summary>One reason why an input cannot be used, and where it is.</summary>
/// <param name="Code">Stable name for programs, such as "dew-point-above-temperature".</param>
/// <param name="Words">What is wrong and what to do; one sentence or two.</param>
public sealed record Refusal(string Code, Words Words)
{
    /// <summary>The words in English.</summary>
    public string Message => Words.ToString();

    /// <summary>The words without the place, for where the place is seen.</summary>
    public Words Reason { get; init; } = Words;

    /// <summary>Line of the text, from 1.</summary>
    public int? Line { get; init; }

    /// <summary>The code group as written (WMO alphanumeric codes).</summary>
    public string? Group { get; init; }

    /// <summary>The field or column.</summary>
    public string? Field { get; init; }

    /// <summary>The level.</summary>
    public Pressure? Level { get; init; }

    /// <summary>Offset in bytes from the start (binary formats).</summary>
    public long? ByteOffset { get; init; }
}

/// <summary>An input that cannot be used as a sounding; says what, where and what to do.</summary>
public sealed class InvalidSoundingException : Exception
{
    /// <summary>With one or more reasons.</summary>
    public InvalidSoundingException(params IReadOnlyList<Refusal> refusals)
        : base(refusals.Count > 0 ? refusals[0].Message : "Not a usable sounding.") => Refusals = refusals;

    /// <summary>The reasons, most useful first; at least one.</summary>
    public IReadOnlyList<Refusal> Refusals { get; }
}
