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

    public string Length(double metres) => Figures.Length(metres);

    public string Distance(double metres) => Figures.Distance(metres);

    public string Speed(double metresPerSecond) => Figures.Speed(metresPerSecond);

    public string Vertical(double metresPerSecond) => Figures.Vertical(metresPerSecond);
}
