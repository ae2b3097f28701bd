using DayBrief.Texts;
using DayBrief.Units;

namespace DayBrief.Soundings.Formats;

/// <summary>Where a value stands in its input, so that a refusal can point at it.</summary>
internal readonly record struct Origin(int? Line = null, string? Group = null, string? Field = null, long? ByteOffset = null)
{
    /// <summary>"Line 4, group 70136", "levels[3].temperatureC", "Byte 120"; null where nothing is known.</summary>
    public Words? Words => new[]
    {
        Line is { } line ? Texts.Words.Of($"Line {line}") : null,
        ByteOffset is { } offset ? Texts.Words.Of($"Byte {offset}") : null,
        Group is { } group ? Texts.Words.Of($"group {group}") : null,
        Field is { } name ? Texts.Words.Of($"{name}") : null,
    }.OfType<Words>().Aggregate(default(Words), (all, part) => all is null ? part : Texts.Words.Of($"{all}, {part}"));

    /// <summary>The same in English; empty where nothing is known.</summary>
    public override string ToString() => Words?.ToString() ?? "";

    public Refusal Refusal(string code, Words message, double? levelHpa = null) =>
        new(code, Words is { } where ? Texts.Words.Of($"{where}: {message}") : message)
        {
            Reason = message,
            Line = Line,
            Group = Group,
            Field = Field,
            ByteOffset = ByteOffset,
            Level = levelHpa is >= 0 and < 2000 ? Pressure.FromHectopascals(levelHpa.Value) : null,
        };

    public InvalidSoundingException Refuse(string code, Words message, double? levelHpa = null) =>
        new(Refusal(code, message, levelHpa));
}
