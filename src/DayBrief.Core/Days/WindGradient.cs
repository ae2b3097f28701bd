using DayBrief.Units;

namespace DayBrief.Days;

/// <summary>Wind that grows fast close to the ground: what a glider loses on its approach.</summary>
internal static class WindGradient
{
    /// <summary>Height up to which it matters: 100 m.</summary>
    public const double WithinM = 100;

    /// <summary>Change of the wind from the ground to there: 10 kt. Common practice, no source.</summary>
    public const double ChangeKt = 10;

    /// <summary>A level so near above it still tells what happens below; a higher one would be guessed between. A choice.</summary>
    private const double ReportedWithinM = 200;

    /// <summary>The ascent's wind at the ground is measured no higher than this. A choice.</summary>
    private const double GroundM = 30;

    /// <summary>As the ascent measured it, until thermals stir the layer; null where it tells nothing between the ground and 200 m.</summary>
    public static Hazard? Of(Brief brief)
    {
        if (brief.Day.Winds is not { } winds
            || !winds.Reports.Any(report => report.Height.Metres <= GroundM)
            || !winds.Reports.Any(report => report.Height.Metres is > GroundM and <= ReportedWithinM)
            || winds.Change(Height.FromMetres(GroundM / 3), Height.FromMetres(WithinM)) is not { } change
            || change.Knots < ChangeKt - 1e-9)
            return null;
        return new(HazardKind.WindGradient, change.MetresPerSecond) { To = brief.Day.Times.TriggerTime, Source = WindSource.Ascent };
    }
}
