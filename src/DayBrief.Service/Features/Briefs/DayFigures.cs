using DayBrief.Days;
using DayBrief.Service.Infrastructure;
using DayBrief.Units;

namespace DayBrief.Service.Features.Briefs;

/// <summary>The figures that readers get: the computed ones, or the instructor's where he overrules them. Null is none.</summary>
internal sealed record DayFigures
{
    public Temperature? Trigger { get; private init; }

    /// <summary>When thermals set in that are usable later in the day; a day without any has no such time.</summary>
    public DateTimeOffset? TriggerTime { get; private init; }

    /// <summary>The air is stirred up to the usable depth, and no thermal becomes usable all the same.</summary>
    public bool TooWeak { get; private init; }

    /// <summary>As computed, but not before the instructor's trigger; a trigger alone makes none.</summary>
    public DateTimeOffset? FirstUsable { get; private init; }

    public Height? UsableTop { get; private init; }

    public Speed? Climb { get; private init; }

    public DateTimeOffset? Last { get; private init; }

    /// <summary>What the instructor overrules; null for nothing.</summary>
    public JudgementJson? Judgement { get; private init; }

    public static DayFigures Of(MadeBrief made)
    {
        var (day, zone, date) = (made.Brief.Day, made.Brief.Site.TimeZone, made.Brief.Date);
        var judged = made.Inputs.Judgement;
        var usable = day.Times.FirstUsable is not null;
        var trigger = At(judged?.TriggerTime) ?? (usable ? day.Times.TriggerTime : null);
        return new()
        {
            Trigger = day.Times.TriggerTemperature,
            TriggerTime = trigger,
            TooWeak = !usable && day.MaxDepth >= made.Brief.Site.UsableDepth,
            FirstUsable = judged?.TriggerTime is not null && day.Times.FirstUsable < trigger ? trigger : day.Times.FirstUsable,
            UsableTop = day.MaxUsableTop,
            Climb = day.MaxClimb,
            Last = At(judged?.LastThermal) ?? day.Times.Last,
            Judgement = judged,
        };

        DateTimeOffset? At(TimeOnly? time) => time is { } local ? LocalClock.InstantOf(date, local, zone) : null;
    }

    /// <summary>How high a glider can climb at a step, where that is as high and as strong as the site asks of a usable thermal.</summary>
    public static double? UsableTopAt(Brief brief, DayStep step) =>
        step.UsableTopAglM >= brief.Site.UsableDepth.Metres ? step.UsableTopAglM : null;

    /// <summary>When the brief is no longer to be used without an amendment: as the instructor says, else sunset; null where
    /// the sun does not set.</summary>
    public static DateTimeOffset? ValidUntil(MadeBrief made) =>
        made.Inputs.ValidUntil is { } time
            ? LocalClock.InstantOf(made.Brief.Date, time, made.Brief.Site.TimeZone)
            : made.Brief.Day.Sun.Sunset;
}
