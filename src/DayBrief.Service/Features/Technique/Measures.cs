using DayBrief.Service.Charts;
using DayBrief.Service.Languages;

namespace DayBrief.Service.Features.Technique;

/// <summary>How lengths and speeds are said to this reader, and the words around them.</summary>
internal sealed record Measures(Figures Figures)
{
    public bool Metric => Figures.Unit == HeightUnit.Metres;

    public Language Language => Figures.Language;

    /// <summary>A text without figures.</summary>
    public string this[string text] => Language[text];

    /// <summary>A text with figures.</summary>
    public string Say(FormattableString text) => Language.Say(text);

    public string Length(double metres) => Metric
        ? Say($"{Math.Round(metres / 5) * 5:#,0} m")
        : Say($"{Math.Round(metres / 0.3048 / 10) * 10:#,0} ft");

    public string Distance(double metres) => Metric
        ? Say($"{metres / 1000:0.0} km")
        : Say($"{metres / 1852:0.0} NM");

    public string Speed(double metresPerSecond) => Metric
        ? Say($"{metresPerSecond * 3.6:0} km/h")
        : Say($"{Units.Speed.FromMetresPerSecond(metresPerSecond).Knots:0} kt");

    public string Vertical(double metresPerSecond) => Figures.Vertical(metresPerSecond);
}
