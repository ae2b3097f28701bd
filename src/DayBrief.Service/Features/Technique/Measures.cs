using DayBrief.Service.Charts;
using DayBrief.Service.Languages;

namespace DayBrief.Service.Features.Technique;

/// <summary>How lengths and speeds are said to this reader, and the words around them.</summary>
internal sealed record Measures(Figures Figures)
{
    /// <summary>What climbs are multiplied by, so that none is told above the day's own.</summary>
    public double ClimbScale { get; init; } = 1;

    public bool Metric => Figures.Unit == HeightUnit.Metres;

    public Language Language => Figures.Language;

    /// <summary>A text without figures.</summary>
    public string this[string text] => Language[text];

    /// <summary>A text with figures.</summary>
    public string Say(FormattableString text) => Language.Say(text);

    public string Length(double metres) => Figures.Length(metres);

    /// <summary>A height that must not be undercut: rounded up.</summary>
    public string AtLeast(double metres) => Figures.AtLeast(metres, Metric ? 5 : 10);

    /// <summary>A bank with its speed, which is rounded up so that the margin over the stall holds.</summary>
    public string Circle(double bankDeg, double metresPerSecond) => Metric
        ? Say($"{bankDeg:0}° of bank at {Math.Ceiling((metresPerSecond * 3.6) - 1e-6):0} km/h")
        : Say($"{bankDeg:0}° of bank at {Math.Ceiling(Units.Speed.FromMetresPerSecond(metresPerSecond).Knots - 1e-6):0} kt");

    public string Circle(Flight.Gliders.Circle circle) => Circle(circle.BankDeg, circle.SpeedMs);

    /// <summary>A climb, never above the day's own.</summary>
    public string Climb(double metresPerSecond) => Vertical(ClimbScale * metresPerSecond);

    public string Distance(double metres) => Figures.Distance(metres);

    public string Speed(double metresPerSecond) => Figures.Speed(metresPerSecond);

    /// <summary>A difference of speed that the study counts in knots, in the reader's unit.</summary>
    public string Faster(double knots) => Speed(Units.Speed.FromKnots(knots).MetresPerSecond);

    public string Vertical(double metresPerSecond) => Figures.Vertical(metresPerSecond);
}
