using DayBrief.Service.Languages;
using DayBrief.Soundings;
using DayBrief.Units;

namespace DayBrief.Service.Charts;

/// <summary>What a tephigram shows.</summary>
internal sealed record TephigramInput
{
    /// <summary>The ascent and what it tells.</summary>
    public required SoundingAnalysis Analysis { get; init; }

    /// <summary>The warming of the day, earliest first.</summary>
    public IReadOnlyList<HeatingStage> Stages { get; init; } = [];

    /// <summary>Dew point at the surface of the air that rises; null: that of the ascent's surface level.</summary>
    public Temperature? DewPoint { get; init; }

    /// <summary>The day's highest thermal top above the surface level; null when not known.</summary>
    public Height? DayTop { get; init; }

    /// <summary>Height of the field above the ascent's surface level.</summary>
    public double FieldAboveAscentM { get; init; }

    public HeightUnit Unit { get; init; }

    public Language Language { get; init; } = Language.English;

    public Figures In => new(Unit, Language);

    public bool SouthernHemisphere { get; init; }

    /// <summary>Width of the drawing.</summary>
    public double Width { get; init; } = TextStyle.PhoneWidth;

    /// <summary>Height it may take.</summary>
    public double MaxHeight { get; init; } = 420;

    /// <summary>A height above the surface level as readers want it: above the field.</summary>
    public double AboveField(double metres) => metres - FieldAboveAscentM;

    public Profile Profile => Analysis.Profile;

    public Temperature? SurfaceDewPoint => DewPoint ?? Profile.SurfaceDewPoint;
}

/// <summary>A surface temperature on the way up the day.</summary>
/// <param name="Surface">Temperature of the air at the surface, as the thermals leave it.</param>
/// <param name="Label">When: a local time, "trigger" or the like.</param>
/// <param name="ScreenC">What a thermometer in a screen shows then, over the heated ground a little more; null: the same.</param>
internal sealed record HeatingStage(Temperature Surface, string Label, double? ScreenC = null)
{
    /// <summary>The temperature that readers are told, as everywhere in the brief.</summary>
    public double ToldC => ScreenC ?? Surface.Celsius;
}
