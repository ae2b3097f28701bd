using DayBrief.Units;

namespace DayBrief.Days;

/// <summary>What cumulus the day makes, and what may come of it.</summary>
public sealed record CloudOutlook
{
    /// <summary>No moisture in the ascent: nothing here is known.</summary>
    public bool Unknown { get; init; }

    /// <summary>Thermals make no cloud.</summary>
    public bool Dry { get; init; }

    /// <summary>First cumulus.</summary>
    public DateTimeOffset? First { get; init; }

    /// <summary>Base of the first cumulus.</summary>
    public Height? FirstBase { get; init; }

    /// <summary>Base at the strongest time of the day, or the last base before it.</summary>
    public Height? Base { get; init; }

    /// <summary>Top of ordinary cumulus at its highest.</summary>
    public Height? Top { get; init; }

    /// <summary>Top of the broadest cumulus where it outgrows the ordinary; null where not.</summary>
    public Height? BroadestTop { get; init; }

    /// <summary>Depth of the deepest cumulus, m; 0 without.</summary>
    internal double DepthM => Base is { } low && (BroadestTop ?? Top) is { } top ? Math.Max(1, top.Metres - low.Metres) : 0;

    /// <summary>Fog or low stratus of the morning; null without.</summary>
    public LowCloudOutlook? Low { get; init; }

    /// <summary>Greatest cover of cumulus, oktas.</summary>
    public double? MaxCoverOktas { get; init; }

    /// <summary>Cumulus spreads out under a stable layer and shuts off the sun.</summary>
    public bool SpreadOut { get; init; }

    /// <summary>From when cumulus grows too tall to soar under.</summary>
    public DateTimeOffset? Overdevelopment { get; init; }

    /// <summary>From when showers are likely.</summary>
    public DateTimeOffset? Showers { get; init; }

    /// <summary>From when thunder is possible.</summary>
    public DateTimeOffset? Thunder { get; init; }

    /// <summary>In words, why.</summary>
    public required IReadOnlyList<Phrase> Reasons { get; init; }
}

/// <summary>Cloud at or near the ground before the sun has stirred the air.</summary>
/// <param name="IsFog">It reaches the ground; else low stratus.</param>
/// <param name="Base">Its lowest base.</param>
/// <param name="From">The first time it is computed.</param>
/// <param name="Clears">When the sun has cleared it; null where it does not.</param>
public sealed record LowCloudOutlook(bool IsFog, Height Base, DateTimeOffset From, DateTimeOffset? Clears);
