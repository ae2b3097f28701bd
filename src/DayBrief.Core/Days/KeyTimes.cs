using System.Collections.Immutable;
using DayBrief.Units;

namespace DayBrief.Days;

/// <summary>When the day's thermals start, are best and end. Null is what does not happen.</summary>
public sealed record KeyTimes
{
    private const int PauseSteps = 3;

    /// <summary>Screen temperature at which the first usable thermal comes; when the day has none, the one at which the air is
    /// stirred to the site's usable depth. Null when the ascent cannot tell.</summary>
    public Temperature? TriggerTemperature { get; init; }

    /// <summary>When it is reached: the same event as <see cref="FirstUsable"/>.</summary>
    public DateTimeOffset? TriggerTime { get; init; }

    /// <summary>First thermal that gives the site's usable climb up to its usable depth.</summary>
    public DateTimeOffset? FirstUsable { get; init; }

    /// <summary>Start of the best window.</summary>
    public DateTimeOffset? BestFrom { get; init; }

    /// <summary>End of the best window.</summary>
    public DateTimeOffset? BestTo { get; init; }

    /// <summary>The climb falls below three quarters of its greatest.</summary>
    public DateTimeOffset? Decline { get; init; }

    /// <summary>Last thermal that gives the site's usable climb up to its usable depth.</summary>
    public DateTimeOffset? Last { get; init; }

    /// <summary>First cumulus.</summary>
    public DateTimeOffset? FirstCloud { get; init; }

    /// <summary>Pauses of 15 min or more between the first and the last usable thermal.</summary>
    public ImmutableArray<Pause> Pauses { get; init; } = [];

    internal static KeyTimes Of(Headline headline, DayFrame frame)
    {
        DateTimeOffset? Time(int step) => step >= 0 ? frame.Times[step] : null;
        return new()
        {
            TriggerTemperature = Temperature.FromKelvins(
                headline.Trigger >= 0 ? headline.TriggerKelvins : TemperatureFor(frame, frame.Site.UsableDepth.Metres)),
            TriggerTime = Time(headline.Trigger),
            FirstUsable = Time(headline.FirstUsable),
            BestFrom = Time(headline.BestFrom),
            BestTo = Time(headline.BestTo),
            Decline = Time(headline.Decline),
            Last = Time(headline.Last),
            FirstCloud = Time(headline.FirstCloud),
            Pauses = [.. PausesOf(headline, frame)],
        };
    }

    private static IEnumerable<Pause> PausesOf(Headline headline, DayFrame frame)
    {
        var last = headline.FirstUsable;
        for (var i = headline.FirstUsable + 1; headline.FirstUsable >= 0 && i <= headline.Last; i++)
        {
            if (!headline.Usable[i])
                continue;
            if (i - last > PauseSteps)
                yield return new(frame.Times[last + 1], frame.Times[i]);
            last = i;
        }
    }

    /// <summary>Temperature at the ground of air that would be stirred to a height: its own potential temperature brought down.</summary>
    private static double TemperatureFor(DayFrame frame, double heightM) =>
        frame.Air.Column.At(Math.Min(heightM, frame.Air.Column.TopM)).Theta * frame.Air.ToSurface;
}

/// <summary>A time without usable thermals between usable ones.</summary>
/// <param name="From">When they stop.</param>
/// <param name="To">When they come again.</param>
public readonly record struct Pause(DateTimeOffset From, DateTimeOffset To);
