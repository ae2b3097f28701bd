using DayBrief.Days;
using DayBrief.Units;

namespace DayBrief.Service.Features.Briefs;

/// <summary>The wind of the morning on the runways: head and across, and whose wind it is.</summary>
internal static class RunwayWords
{
    public static IEnumerable<Fact> Of(MadeBrief made, Reader reader)
    {
        var (brief, inUse) = (made.Brief, made.Inputs.RunwayInUse);
        if (brief.Site.Runways.Length == 0)
            yield break;
        var runways = RunwayHour.InTheMorning(brief, inUse);
        if (runways.Count == 0)
            yield return new(reader["Runways"], reader["wind not known"]);
        foreach (var part in runways)
        {
            var designator = part.Runway.Designator;
            yield return new(
                designator == inUse ? reader.Say($"Runway {designator}, in use") : reader.Say($"Runway {designator}"),
                part.Along.Knots >= 0
                    ? reader.Say($"{reader.WindSpeed(part.Along)} head, {reader.WindSpeed(part.Across)} across ({Whose(part, reader)})")
                    : reader.Say($"{reader.WindSpeed(Speed.FromKnots(-part.Along.Knots))} tail, {reader.WindSpeed(part.Across)} across ({Whose(part, reader)})"));
        }
    }

    /// <summary>Whose wind it is, and of when.</summary>
    public static string Whose(RunwayHour part, Reader reader) => (part.Source, part.Seen) switch
    {
        (WindSource.Ascent, { } at) => reader.Say($"ascent, {reader.Time(at)}"),
        (WindSource.Ascent, null) => reader["the ascent's wind"],
        (WindSource.Reported, { } at) => reader.Say($"{part.Station}, {reader.Time(at)}"),
        (WindSource.Reported, null) => reader.Say($"reported at {part.Station}"),
        (WindSource.Forecast, _) => reader.Say($"forecast for {part.Station}"),
        _ => reader["assumed by the instructor"],
    };
}
