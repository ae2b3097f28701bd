using System.Collections.Immutable;

namespace DayBrief.Days;

/// <summary>The two ways thermals behave, decided by numbers.</summary>
public enum ThermalKind
{
    /// <summary>No usable thermals.</summary>
    None,

    /// <summary>Supply-limited: strong while the sun feeds them, gone when it does not.</summary>
    ShortLived,

    /// <summary>Of a deep unstable layer: wide and long-lived.</summary>
    Broad,
}

/// <summary>What kind of thermals the day has, and why.</summary>
public sealed record ThermalType
{
    /// <summary>The kind.</summary>
    public required ThermalKind Kind { get; init; }

    /// <summary>Share of the likely courses of the day that have this kind, per cent; null without an ensemble.</summary>
    public double? ChancePercent { get; init; }

    /// <summary>The wind shear makes them lean by more than 30°.</summary>
    public bool Leaning { get; init; }

    /// <summary>They stand in streets.</summary>
    public bool InStreets { get; init; }

    /// <summary>A stable layer ends them below 1000 m.</summary>
    public bool CappedLow { get; init; }

    /// <summary>Why, one sentence each, the deciding ones first.</summary>
    public required ImmutableArray<Phrase> Reasons { get; init; }

    /// <summary>The numbers that decided.</summary>
    public ImmutableArray<TypeCriterion> Criteria { get; init; } = [];

    /// <summary>The kind in words: "none", "short-lived" or "broad".</summary>
    public string Name => Kind switch
    {
        ThermalKind.ShortLived => "short-lived",
        ThermalKind.Broad => "broad",
        _ => "none",
    };
}

/// <summary>One number of the table that tells the kinds apart.</summary>
/// <param name="Name">What it is, with its unit.</param>
/// <param name="Value">Its value at the strongest time.</param>
/// <param name="Kind">What it speaks for; <see cref="ThermalKind.None"/> when it lies between.</param>
public readonly record struct TypeCriterion(string Name, double Value, ThermalKind Kind);
