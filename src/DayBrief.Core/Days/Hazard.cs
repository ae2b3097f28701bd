using System.Collections.Immutable;

namespace DayBrief.Days;

/// <summary>One hazard that the day gives cause for. Words are the reader's business: these are the figures.</summary>
/// <param name="Kind">What it is.</param>
/// <param name="Value">Its figure in SI (height m, speed m/s, temperature °C), as <see cref="Hazards"/> says for each kind.</param>
public sealed record Hazard(HazardKind Kind, double? Value = null)
{
    /// <summary>From when; null for all day.</summary>
    public DateTimeOffset? From { get; init; }

    /// <summary>Until when; null where it has no known end.</summary>
    public DateTimeOffset? To { get; init; }

    /// <summary>The runway, station or other thing it is about.</summary>
    public string? About { get; init; }

    /// <summary>How it is known; null for what is computed.</summary>
    public WindSource? Source { get; init; }

    /// <summary>What it can do and how likely, where this one's cause tells it better than its kind; null for its kind's.</summary>
    public Risk? Risk { get; init; }

    /// <summary>Limits of the site that it passes, the lowest first.</summary>
    public ImmutableArray<PassedLimit> Passed { get; init; } = [];
}

/// <summary>A limit of the site that a day passes.</summary>
/// <param name="Group">For whom; null for everybody.</param>
/// <param name="Limit">The limit in SI.</param>
public readonly record struct PassedLimit(CrosswindGroup? Group, double Limit);

/// <summary>Whom a limit of crosswind is for.</summary>
public enum CrosswindGroup
{
    /// <summary>Before the first solo, with an instructor.</summary>
    BeforeSolo,

    /// <summary>Solo near the field.</summary>
    LocalSolo,

    /// <summary>Cross-country pilots.</summary>
    CrossCountry,
}
