using DayBrief.Service.Languages;
using DayBrief.Units;

namespace DayBrief.Service.Charts;

/// <summary>Heights and vertical speeds as a reader wants them, with the words around them.</summary>
internal readonly record struct Figures(HeightUnit Unit, Language Language)
{
    /// <summary>A text without figures.</summary>
    public string this[string text] => Language[text];

    /// <summary>A text with figures.</summary>
    public string Say(FormattableString text) => Language.Say(text);

    /// <summary>The figure alone, to the nearest 100 ft or 50 m: no forecast height is known better.</summary>
    public string Figure(double metres) => Rounded(metres, Unit == HeightUnit.Feet ? 100 : 50);

    /// <summary>The figure with its unit.</summary>
    public string Text(double metres) => $"{Figure(metres)} {Unit.Name()}";

    /// <summary>A length to a step of the unit, with its unit.</summary>
    public string Length(double metres, double step) => $"{Rounded(metres, step)} {Unit.Name()}";

    /// <summary>A vertical speed as readers of this unit want it: knots with feet, m/s with metres.</summary>
    public string Vertical(double metresPerSecond, string format = "0.0") =>
        $"{VerticalFigure(metresPerSecond, format)} {(Unit == HeightUnit.Feet ? "kt" : "m/s")}";

    /// <summary>The figure of a vertical speed alone.</summary>
    public string VerticalFigure(double metresPerSecond, string format = "0.0") =>
        (Unit == HeightUnit.Feet ? Speed.FromMetresPerSecond(metresPerSecond).Knots : metresPerSecond)
            .ToString(format, Language.Culture);

    /// <summary>A temperature with its unit.</summary>
    public string Celsius(double celsius, string format = "0.#") =>
        $"{celsius.ToString(format, Language.Culture)} °C";

    private string Rounded(double metres, double step) =>
        (Math.Round(Unit.FromMetres(metres) / step) * step).ToString("N0", Language.Culture);
}
