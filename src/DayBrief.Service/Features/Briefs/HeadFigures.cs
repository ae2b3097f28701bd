using DayBrief.Days;

namespace DayBrief.Service.Features.Briefs;

/// <summary>One of the four large figures: its name, its value and in small type its likely range.</summary>
internal sealed record HeadFigure(string Name, string Value, string Detail)
{
    /// <summary>When it is reached; null for a figure without a time of its own.</summary>
    public string? Time { get; init; }
}

/// <summary>Trigger, usable top, climb, last thermal.</summary>
internal static class HeadFigures
{
    public static IReadOnlyList<HeadFigure> Of(MadeBrief made, Reader reader)
    {
        var (figures, ranges) = (DayFigures.Of(made), made.Brief.Day.Ranges);
        var (judged, none, own) = (figures.Judgement, reader["none [figure of the day]"], reader["the instructor's figure"]);
        return
        [
            Trigger(figures, ranges, reader, own),
            new(
                reader["Usable top"],
                figures.UsableTop is { } top ? reader.Height(top.Metres) : none,
                judged?.UsableTopAglM is not null ? own : ranges is null ? "" : Span(reader, ranges.MaxUsableTopM, reader.HeightNumber, reader.HeightUnit)),
            new(
                reader["Climb"],
                figures.Climb is { } climb ? reader.Climb(climb.MetresPerSecond) : none,
                judged?.ClimbMs is not null ? own : ranges is null ? "" : Span(reader, ranges.MaxClimbMs, reader.ClimbNumber, reader.ClimbUnit)),
            new(
                reader["Last thermal"],
                figures.Last is { } last ? reader.Time(last) : none,
                judged?.LastThermal is not null ? own : ranges is null ? "" : Span(reader, ranges.Last)),
        ];
    }

    private static HeadFigure Trigger(DayFigures figures, DayRanges? ranges, Reader reader, string own)
    {
        var temperature = figures.Trigger is { } known ? Reader.Temperature(known.Celsius) : reader["not known"];
        if (figures.TriggerTime is not { } time)
        {
            return figures.TooWeak
                ? new(reader["Trigger"], reader["none [figure of the day]"], reader.Say($"deep enough at {temperature}, but too weak to climb"))
                : new(reader["Trigger"], temperature, reader["not reached today"]);
        }

        var range = figures.Judgement is { TriggerTime: not null } or { TriggerTemperatureC: not null }
            ? own
            : ranges is null ? "" : Span(reader, ranges.TriggerTime);
        return new(reader["Trigger"], temperature, reader.Say($"about {reader.Time(time)}") + (range.Length > 0 ? $", {range}" : ""))
        {
            Time = reader.Time(time),
        };
    }

    /// <summary>"likely 3,800–5,600 ft": eight cases of ten; says so when one case in ten or more has none.</summary>
    private static string Span(Reader reader, DayRange<double> range, Func<double, string> number, string unit) => range switch
    {
        { P10: { } low, P90: { } high } => reader.Say($"likely {number(low)}–{number(high)} {unit}"),
        { P90: { } high } => reader.Say($"up to {number(high)} {unit}, or none"),
        _ => reader["none likely"],
    };

    private static string Span(Reader reader, DayRange<DateTimeOffset> range) => range switch
    {
        { P10: { } early, P90: { } late } => reader.Say($"likely {reader.Time(early)}–{reader.Time(late)}"),
        { P10: { } early } => reader.Say($"likely from {reader.Time(early)}, or none"),
        _ => reader["none likely"],
    };
}
