using DayBrief.Days;
using DayBrief.Service.Infrastructure;
using DayBrief.Units;

namespace DayBrief.Service.Features.Briefs;

/// <summary>Where the instructor overrules the computed figures. Null stands for the computed one, which is kept in any case.</summary>
public sealed record JudgementJson
{
    public double? TriggerTemperatureC { get; init; }

    /// <summary>Local time.</summary>
    public TimeOnly? TriggerTime { get; init; }

    /// <summary>Usable top above the field, m.</summary>
    public double? UsableTopAglM { get; init; }

    public double? ClimbMs { get; init; }

    /// <summary>Local time of the last usable thermal.</summary>
    public TimeOnly? LastThermal { get; init; }

    /// <summary>Why, in the instructor's words.</summary>
    public string? Reason { get; init; }

    internal bool IsEmpty => this with { Reason = null } == new JudgementJson();

    /// <summary>The figures at a field on a day; null where none is given.</summary>
    internal DayJudgement? Of(Site site, DateOnly date)
    {
        return IsEmpty ? null : new()
        {
            Trigger = TriggerTemperatureC is { } celsius ? Temperature.FromCelsius(celsius) : null,
            TriggerTime = At(TriggerTime),
            UsableTop = UsableTopAglM is { } metres ? Height.FromMetres(metres) : null,
            Climb = ClimbMs is { } climb ? Speed.FromMetresPerSecond(climb) : null,
            Last = At(LastThermal),
        };

        DateTimeOffset? At(TimeOnly? time) => time is { } local ? LocalClock.InstantOf(date, local, site.TimeZone) : null;
    }

    /// <exception cref="InvalidInputException">A figure is out of range; all are named.</exception>
    internal void Check()
    {
        var errors = new FieldErrors("judgement");
        errors.Optional("triggerTemperatureC", TriggerTemperatureC);
        errors.Optional("usableTopAglM", UsableTopAglM);
        errors.Optional("climbMs", ClimbMs);
        CheckTimes(errors, "lastThermal");
        errors.ThrowIfAny();
    }

    /// <summary>Thermals that end before they begin are a slip of the pen.</summary>
    internal void CheckTimes(FieldErrors errors, string field)
    {
        if (LastThermal <= TriggerTime)
            errors.Add(field, $"Needs a time after that of the trigger.");
    }
}

/// <summary>What the instructor adds for pilots of each experience.</summary>
public sealed record NotesJson(string? BeforeSolo, string? LocalSolo, string? CrossCountry)
{
    internal bool IsEmpty => this == new NotesJson(null, null, null);
}
