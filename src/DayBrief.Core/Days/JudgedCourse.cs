namespace DayBrief.Days;

/// <summary>The course of a computed day through the figures that an instructor gives.</summary>
internal sealed class JudgedCourse
{
    private readonly ConvectiveDay _day;
    private readonly DayJudgement _judgement;
    private readonly double _topScale;
    private readonly double _climbScale;
    private readonly DateTimeOffset? _strongest;

    public JudgedCourse(ConvectiveDay day, DayJudgement judgement)
    {
        (_day, _judgement) = (day, judgement);
        _strongest = DayThermal.StrongestStep(day)?.Time;
        // The given figure is the greatest of the course that is shown, which need not be the computed headline's.
        var kept = day.Steps.Select(Timed).Where(step => step.UsableTopAglM is not null).ToArray();
        LeavesNothing = kept.Length == 0 && day.Times.FirstUsable is not null;
        _topScale = judgement.UsableTop?.Metres / kept.Max(step => step.UsableTopAglM) ?? 1;
        _climbScale = judgement.Climb?.MetresPerSecond / kept.Max(step => step.ClimbMs) ?? 1;
    }

    /// <summary>The given times leave nothing of the computed thermals.</summary>
    public bool LeavesNothing { get; }

    /// <summary>The day's afternoon is drawn out: the given last thermal is later than the computed one.</summary>
    private bool IsDrawnOut => _judgement.Last > _day.Times.Last && _strongest < _day.Times.Last;

    public DayStep Of(DayStep step)
    {
        var timed = Timed(step);
        if (timed.UsableTopAglM is not { } top)
            return timed;
        var climb = timed.ClimbMs * _climbScale;
        // The glider sinks in its circle as before: what it climbs more, the air rises more, and with it the velocity scale.
        var core = timed.CoreUpdraftMs + (climb - timed.ClimbMs);
        return timed with
        {
            UsableTopAglM = top * _topScale,
            ThermalTopAglM = timed.ThermalTopAglM is { } ends ? Math.Max(ends, top * _topScale) : null,
            ClimbMs = climb,
            CoreUpdraftMs = core,
            ConvectiveVelocityScaleMs = timed.CoreUpdraftMs > 0 ? timed.ConvectiveVelocityScaleMs * core / timed.CoreUpdraftMs : timed.ConvectiveVelocityScaleMs,
        };
    }

    public KeyTimes Times()
    {
        var times = _day.Times with
        {
            TriggerTemperature = _judgement.Trigger ?? _day.Times.TriggerTemperature,
            TriggerTime = _judgement.TriggerTime ?? _day.Times.TriggerTime,
            Last = _judgement.Last ?? _day.Times.Last,
        };
        if (_day.Times.FirstUsable is null || _day.Times.Last is null)
            return times;
        var first = Later(_judgement.TriggerTime, times.FirstUsable) ?? times.FirstUsable;
        var (from, to, decline) = (Drawn(times.BestFrom), Drawn(times.BestTo), Drawn(times.Decline));
        from = from < first ? first : from;
        to = to > times.Last ? times.Last : to;
        return times with
        {
            FirstUsable = first,
            BestFrom = from < to ? from : null,
            BestTo = from < to ? to : null,
            Decline = decline > first && decline < times.Last ? decline : null,
            Pauses = [.. times.Pauses.Where(pause => pause.From > first && pause.To < times.Last)],
        };
    }

    /// <summary>None before the given trigger nor after the given last thermal, and a longer afternoon drawn out.</summary>
    private DayStep Timed(DayStep step) =>
        step.Time < Later(_judgement.TriggerTime, _day.Times.TriggerTime) || step.Time > Earlier(_judgement.Last, _day.Times.Last) ? WithoutThermals(step)
        : IsDrawnOut && step.Time > _strongest ? Shaped(step)
        : step;

    internal static DayStep WithoutThermals(DayStep step) => step with
    {
        UsableTopAglM = null,
        ClimbMs = step.ClimbMs is null ? null : 0,
    };

    /// <summary>A step of the longer afternoon takes its thermals from the same share of the computed one.</summary>
    private DayStep Shaped(DayStep step)
    {
        var share = (step.Time - _strongest!.Value) / (_judgement.Last!.Value - _strongest.Value);
        var at = _strongest.Value + (share * (_day.Times.Last!.Value - _strongest.Value));
        var like = _day.Steps.MinBy(one => (one.Time - at).Duration())!;
        return step with
        {
            UsableTopAglM = like.UsableTopAglM,
            ThermalTopAglM = like.ThermalTopAglM,
            ClimbMs = like.ClimbMs,
            CoreUpdraftMs = like.CoreUpdraftMs,
            ConvectiveVelocityScaleMs = like.ConvectiveVelocityScaleMs,
            PickedRadiusM = like.PickedRadiusM,
            ThermalRadiusM = like.ThermalRadiusM,
            SpacingM = like.SpacingM,
        };
    }

    private DateTimeOffset? Drawn(DateTimeOffset? time) => IsDrawnOut && time > _strongest
        ? _strongest + ((time - _strongest) / (_day.Times.Last - _strongest) * (_judgement.Last - _strongest))
        : time;

    /// <summary>What is given, where it is later than computed.</summary>
    private static DateTimeOffset? Later(DateTimeOffset? given, DateTimeOffset? computed) => given > computed ? given : null;

    /// <summary>What is given, where it is earlier than computed.</summary>
    private static DateTimeOffset? Earlier(DateTimeOffset? given, DateTimeOffset? computed) => given < computed ? given : null;
}
