using DayBrief.Service.Languages;
using DayBrief.Units;

namespace DayBrief.Service.Charts;

/// <summary>Heights and speeds as a reader wants them, with the words around them; rounded as <see cref="Rounding"/> says.</summary>
internal readonly record struct Figures(HeightUnit Unit, Language Language)
{
    public Rounding Rounding => new(Unit == HeightUnit.Metres);

    /// <summary>A text without figures.</summary>
    public string this[string text] => Language[text];

    /// <summary>A text with figures.</summary>
    public string Say(FormattableString text) => Language.Say(text);

    /// <summary>The figure of a height alone.</summary>
    public string Figure(double metres) => Whole(Rounding.Height(metres));

    /// <summary>The height with its unit.</summary>
    public string Text(double metres) => $"{Figure(metres)} {Unit.Name()}";

    /// <summary>A height that nobody may pass, with its unit; never more than it is.</summary>
    public string Ceiling(double metres) => $"{Whole(Rounding.Ceiling(metres))} {Unit.Name()}";

    /// <summary>A length such as a radius, with its unit.</summary>
    public string Length(double metres) => $"{Whole(Rounding.Length(metres))} {Unit.Name()}";

    /// <summary>A distance over the ground, with its unit.</summary>
    public string Distance(double metres) => $"{Rounding.Distance(metres).ToString("0.0", Language.Culture)} {Rounding.DistanceUnit}";

    /// <summary>A wind or an airspeed, with its unit.</summary>
    public string Speed(double metresPerSecond) => $"{Whole(Rounding.Speed(metresPerSecond))} {Rounding.SpeedUnit}";

    /// <summary>A wind or an airspeed that nobody may pass, with its unit; never more than it is.</summary>
    public string SpeedLimit(double metresPerSecond) => $"{Whole(Rounding.SpeedLimit(metresPerSecond))} {Rounding.SpeedUnit}";

    /// <summary>A wind: where from, and how fast.</summary>
    public string Wind(Wind wind) =>
        Rounding.Speed(wind.Speed.MetresPerSecond) == 0
            ? Language["calm"]
            : $"{Rounding.Direction(wind.FromDegrees):000}° {Speed(wind.Speed.MetresPerSecond)}";

    /// <summary>A vertical speed with its unit.</summary>
    public string Vertical(double metresPerSecond) => $"{VerticalFigure(metresPerSecond)} {Rounding.VerticalUnit}";

    /// <summary>A height that must not be undercut, rounded up to a step of the unit, with its unit.</summary>
    public string AtLeast(double metres, double step) =>
        $"{(Math.Ceiling((Unit.FromMetres(metres) / step) - 1e-6) * step).ToString("N0", Language.Culture)} {Unit.Name()}";

    /// <summary>The figure of a vertical speed alone.</summary>
    public string VerticalFigure(double metresPerSecond) => Rounding.Vertical(metresPerSecond).ToString("0.0", Language.Culture);

    /// <summary>A temperature in whole degrees, with its unit.</summary>
    public string Celsius(double celsius) => $"{Rounding.Celsius(celsius).ToString("0", Language.Culture)} °C";

    /// <summary>A difference of temperature, to a tenth.</summary>
    public string Kelvins(double kelvins) => $"{Rounding.To(kelvins, 0.1).ToString("0.#", Language.Culture)} °C";

    private string Whole(double figure) => figure.ToString("N0", Language.Culture);
}
