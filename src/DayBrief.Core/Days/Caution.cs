namespace DayBrief.Days;

/// <summary>Something about a computed day that a reader must know before using it.</summary>
/// <param name="Code">Stable name for programs, such as "no-dew-points".</param>
/// <param name="Text">What it is and what it means; one sentence or two.</param>
public sealed record Caution(string Code, Phrase Text);
