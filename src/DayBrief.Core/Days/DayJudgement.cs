using DayBrief.Units;

namespace DayBrief.Days;

/// <summary>What an instructor says instead of computed figures. Null stands for the computed one.</summary>
public sealed record DayJudgement
{
    /// <summary>Screen temperature at which thermals set in.</summary>
    public Temperature? Trigger { get; init; }

    /// <summary>When they do.</summary>
    public DateTimeOffset? TriggerTime { get; init; }

    /// <summary>Greatest usable height above ground; 0 for no usable thermals.</summary>
    public Height? UsableTop { get; init; }

    /// <summary>Greatest climb; 0 for no usable thermals.</summary>
    public Speed? Climb { get; init; }

    /// <summary>Last usable thermal.</summary>
    public DateTimeOffset? Last { get; init; }

    private bool SaysNone => UsableTop?.Metres <= 0 || Climb?.MetresPerSecond <= 0;

    /// <summary>The day with these figures in the place of the computed ones, at every time: heights and climbs keep the shape of
    /// the computed course, none is before the given trigger or after the given last thermal, and an afternoon that lasts
    /// longer is the computed one drawn out. The air's own course (layer, moisture, cloud, wind) stays as computed, and so
    /// do the ranges of figures that nobody overrules; those of the others are not known.</summary>
    /// <remarks>A day for which no usable thermals were computed is given the headline figures only: no course is made up.</remarks>
    public ConvectiveDay Over(ConvectiveDay day)
    {
        ArgumentNullException.ThrowIfNull(day);
        if (SaysNone)
            return None(day);
        var course = new JudgedCourse(day, this);
        if (course.LeavesNothing)
            return None(day);
        return day with
        {
            Steps = [.. day.Steps.Select(course.Of)],
            Times = course.Times(),
            MaxUsableTop = UsableTop ?? day.MaxUsableTop,
            MaxClimb = Climb ?? day.MaxClimb,
            // A band of what was computed would lie beside the course that is shown.
            UsableTopBand = UsableTop is null && TriggerTime is null && Last is null ? day.UsableTopBand : [],
            Ranges = Beside(day.Ranges),
            // Whoever says how high or how well it goes says that it goes.
            NoUsableThermalProbability = UsableTop is null && Climb is null ? day.NoUsableThermalProbability : null,
        };
    }

    /// <summary>The computed range of a figure says nothing of the one that stands instead of it: not known.</summary>
    private DayRanges? Beside(DayRanges? ranges) => ranges is null ? null : ranges with
    {
        TriggerTime = TriggerTime is null ? ranges.TriggerTime : default,
        TriggerTemperatureC = Trigger is null ? ranges.TriggerTemperatureC : default,
        FirstUsable = TriggerTime is null ? ranges.FirstUsable : default,
        BestFrom = TriggerTime is null && Last is null ? ranges.BestFrom : default,
        BestTo = TriggerTime is null && Last is null ? ranges.BestTo : default,
        Last = Last is null ? ranges.Last : default,
        MaxUsableTopM = UsableTop is null ? ranges.MaxUsableTopM : default,
        MaxClimbMs = Climb is null ? ranges.MaxClimbMs : default,
    };

    private ConvectiveDay None(ConvectiveDay day) => day with
    {
        Steps = [.. day.Steps.Select(JudgedCourse.WithoutThermals)],
        Times = new()
        {
            TriggerTemperature = Trigger ?? day.Times.TriggerTemperature,
            TriggerTime = TriggerTime ?? day.Times.TriggerTime,
            FirstCloud = day.Times.FirstCloud,
        },
        MaxUsableTop = null,
        MaxClimb = null,
        UsableTopBand = [],
        NoUsableThermalProbability = null,
        Ranges = day.Ranges is null ? null : Beside(day.Ranges)! with
        {
            FirstUsable = default,
            BestFrom = default,
            BestTo = default,
            Last = default,
            MaxUsableTopM = default,
            MaxClimbMs = default,
        },
        ThermalType = new() { Kind = ThermalKind.None, Reasons = [Phrase.Plain("By the instructor's judgement no usable thermals.")] },
    };
}
