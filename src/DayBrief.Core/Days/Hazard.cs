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

    /// <summary>A second figure that belongs to the cause: the K index beside CAPE, the lean beside the wind (degrees), the mean
    /// beside the gusts (m/s); null where there is none.</summary>
    public double? Beside { get; init; }

    /// <summary>The group of the forecast that says it, as written; null otherwise.</summary>
    public string? Quoted { get; init; }

    /// <summary>Nobody flies in it: be down before it. Null for what <see cref="CautionTable"/> says of its kind.</summary>
    public bool? EndsFlying { get; init; }

    /// <summary>It is there from the beginning of the day, so that nobody can be down before it.</summary>
    public bool FromTheStart { get; init; }

    /// <summary>Limits that it passes, the lowest first.</summary>
    public ImmutableArray<PassedLimit> Passed { get; init; } = [];
}

/// <summary>A limit that a day passes.</summary>
/// <param name="Group">For whom; null for everybody.</param>
/// <param name="Limit">The limit in SI.</param>
/// <param name="IsSet">The site sets it; else it is <see cref="UsualLimits">the usual one</see>.</param>
public readonly record struct PassedLimit(CrosswindGroup? Group, double Limit, bool IsSet = true);

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
