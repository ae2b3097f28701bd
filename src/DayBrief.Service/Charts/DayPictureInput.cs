using DayBrief.Service.Languages;

namespace DayBrief.Service.Charts;

/// <summary>What the picture of the day shows. Heights are above the field, times local.</summary>
internal sealed record DayPictureInput
{
    /// <summary>The day's moments, earliest first. A value that physics or the data do not give is null and leaves a gap.</summary>
    public required IReadOnlyList<DayMoment> Moments { get; init; }

    /// <summary>Left edge; null (no sunrise, or not known): the first moment.</summary>
    public TimeOnly? Sunrise { get; init; }

    /// <summary>Right edge; null: the last moment.</summary>
    public TimeOnly? Sunset { get; init; }

    public double? FreezingLevelM { get; init; }

    /// <summary>The height that nobody at this field may pass, such as the airspace above it.</summary>
    public double? CeilingM { get; init; }

    /// <summary>The usable top as the instructor judges it, where that is not the computed one.</summary>
    public double? JudgedTopM { get; init; }

    /// <summary>Times to mark: trigger, first usable, last.</summary>
    public IReadOnlyList<KeyTime> KeyTimes { get; init; } = [];

    /// <summary>The local time at which the picture is looked at, to be marked; null for a picture that is kept or printed.</summary>
    public TimeOnly? Now { get; init; }

    public HeightUnit Unit { get; init; }

    public Language Language { get; init; } = Language.English;

    public Figures In => new(Unit, Language);

    public double Width { get; init; } = TextStyle.PhoneWidth;

    public double Height { get; init; } = 250;
}

/// <summary>One moment of the day. Heights in metres above the field.</summary>
/// <param name="Time">Local time.</param>
/// <param name="UsableTopM">How high a glider can climb.</param>
/// <param name="P10M">The usable top is lower than this with one chance in ten.</param>
/// <param name="P90M">The usable top is higher than this with one chance in ten.</param>
/// <param name="CloudBaseM">Base of the cumulus.</param>
/// <param name="CloudTopM">Its top.</param>
internal sealed record DayMoment(
    TimeOnly Time,
    double? UsableTopM,
    double? P10M = null,
    double? P90M = null,
    double? CloudBaseM = null,
    double? CloudTopM = null);

/// <summary>A time to mark on the day.</summary>
/// <param name="Time">Local time.</param>
/// <param name="Label">One or two words, such as "trigger".</param>
internal sealed record KeyTime(TimeOnly Time, string Label);
