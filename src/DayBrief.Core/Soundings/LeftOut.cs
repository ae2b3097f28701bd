using System.Collections.Frozen;

namespace DayBrief.Soundings;

/// <summary>The remarks that tell of something in the input that was not used: readers must see that before they see the day.</summary>
public static class LeftOut
{
    /// <summary>Their codes.</summary>
    public static FrozenSet<string> Codes { get; } = FrozenSet.ToFrozenSet(
    [
        "group-unreadable", "part-unreadable", "truncated", "wind-incomplete", "message-left-out", "short-rows", "fields-ignored", "columns-ignored", "ground-missing",
    ]);
}
