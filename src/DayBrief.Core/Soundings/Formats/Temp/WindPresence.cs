namespace DayBrief.Soundings.Formats.Temp;

/// <summary>Whether a standard level has a wind group. Id in the header tells up to which level winds are sent; above
/// it the group is left out, and what follows the temperature begins the next level.</summary>
/// <remarks>[WMO306] FM 35 and code table 1734. Where Id stands for two levels (1 = 150 or 100 hPa, 2 = 250 or 200 hPa)
/// the figures decide. Where a station sends winds above its Id, a group that makes no plausible height of the next level
/// is a wind.</remarks>
internal static class WindPresence
{
    /// <summary>No wind group; one; one is due and the message ends; a group of the level is lost.</summary>
    public enum Kind
    {
        None,
        Given,
        Cut,
        Lost,
    }

    /// <param name="part">The part.</param>
    /// <param name="header">Its header.</param>
    /// <param name="level">Index of the level.</param>
    /// <param name="isSurface">Whether it is the surface.</param>
    /// <param name="goesOn">Winds were found above Id already, so they are due to the top.</param>
    /// <param name="next">The group after the temperature.</param>
    public static Kind Of(TempPart part, TempHeader header, int level, bool isSurface, bool goesOn, TempGroup? next)
    {
        var levels = StandardLevel.Of(part.Letter);
        var due = goesOn || (isSurface ? header.WindTop is not null : IsDue(levels[level], part, header));
        if (next is not { } group)
        {
            return due && !part.Ended ? Kind.Cut : Kind.None;
        }

        if (!group.IsWhole)
        {
            return part.Ended || group != part.Groups[^1] ? Kind.Given : Kind.Cut;
        }

        if (group.Text == "/////")
        {
            return Kind.Given;
        }

        var opensNext = OpensNext(levels, level, group);
        return (due, opensNext, IsWind(group)) switch
        {
            (_, false, true) => Kind.Given,
            (true, true, true) => Kind.Given,
            (true, true, false) => isSurface ? Kind.None : Kind.Lost,
            (true, false, false) => Kind.Given,
            _ => Kind.None,
        };
    }

    /// <summary>Whether winds go on above a standard level. Id 1 and 2 are reached with 150 and 250 hPa.</summary>
    public static bool IsBelowTop(int hpa, char letter, int? top) => (letter, top) switch
    {
        (_, null) => false,
        ('C', { } tens) => hpa > 10 * tens,
        (_, 0) => hpa > 1000,
        (_, { } hundreds) => hpa >= 100 * (hundreds + 1),
    };

    /// <summary>Whether Id says that a level has a wind.</summary>
    public static bool IsDue(StandardLevel level, TempPart part, TempHeader header) => Due(level.Hpa, part.Letter, header.WindTop);

    private static bool Due(int hpa, char letter, int? top) => (letter, top) switch
    {
        (_, null) => false,
        ('C', { } tens) => hpa >= 10 * tens,
        (_, 0) => hpa >= 1000,
        (_, { } hundreds) => hpa >= 100 * hundreds,
    };

    private static bool OpensNext(IReadOnlyList<StandardLevel> levels, int level, TempGroup group) =>
        group.OpensSection
        || group.Text[..2] is "88" or "77" or "66"
        || levels.Skip(level + 1).Take(2).Any(next => next.Figures == group.Text[..2] && (group.Number(2, 3) is not { } hhh || next.IsPlausible(hhh)));

    // No wind in a free atmosphere reaches 250 knots; "00" is a direction only in a calm.
    private static bool IsWind(TempGroup group) =>
        !group.OpensSection
        && TempElements.Wind(group) is { } wind
        && wind.Speed < 250
        && (group.Text[..2] != "00" || wind.Speed == 0 || wind.FromDeg == 5);
}
