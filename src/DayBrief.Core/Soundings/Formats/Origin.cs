using System.Globalization;
using DayBrief.Units;

namespace DayBrief.Soundings.Formats;

/// <summary>Where a value stands in its input, so that a refusal can point at it.</summary>
internal readonly record struct Origin(int? Line = null, string? Group = null, string? Field = null, long? ByteOffset = null)
{
    /// <summary>As words: "Line 4, group 70136", "levels[3].temperatureC", "Byte 120"; empty where nothing is known.</summary>
    public override string ToString() => string.Join(", ", new[]
    {
        Line is { } line ? string.Create(CultureInfo.InvariantCulture, $"Line {line}") : null,
        ByteOffset is { } offset ? string.Create(CultureInfo.InvariantCulture, $"Byte {offset}") : null,
        Group is null ? null : $"group {Group}",
        Field,
    }.Where(part => part is not null));

    public Refusal Refusal(string code, string message, double? levelHpa = null) =>
        new(code, ToString() is { Length: > 0 } where ? $"{where}: {message}" : message)
        {
            Line = Line,
            Group = Group,
            Field = Field,
            ByteOffset = ByteOffset,
            Level = levelHpa is >= 0 and < 2000 ? Pressure.FromHectopascals(levelHpa.Value) : null,
        };

    public InvalidSoundingException Refuse(string code, string message, double? levelHpa = null) =>
        new(Refusal(code, message, levelHpa));
}
