using DayBrief.Days;

namespace DayBrief.Service.Features.Briefs;

/// <summary>One of the four large figures: its name, its value and in small type its likely range.</summary>
internal sealed record HeadFigure(string Name, string Value, string Detail);

/// <summary>Trigger, usable top, climb, last thermal.</summary>
internal static class HeadFigures
{
    public static IReadOnlyList<HeadFigure> Of(Brief brief, Reader reader)
    {
        var (day, ranges) = (brief.Day, brief.Day.Ranges);
        return
        [
            Trigger(day, reader),
            new(
                reader["Usable top"],
                day.MaxUsableTop is { } top ? reader.Height(top.Metres) : reader["none [figure of the day]"],
                ranges is null ? "" : Span(reader, ranges.MaxUsableTopM, reader.HeightNumber, reader.HeightUnit)),
            new(
                reader["Climb"],
                day.MaxClimb is { } climb ? reader.Climb(climb.MetresPerSecond) : reader["none [figure of the day]"],
                ranges is null ? "" : Span(reader, ranges.MaxClimbMs, reader.ClimbNumber, reader.SpeedUnit)),
            new(
                reader["Last thermal"],
                day.Times.Last is { } last ? reader.Time(last) : reader["none [figure of the day]"],
                ranges is null ? "" : Span(reader, ranges.Last)),
        ];
    }

    private static HeadFigure Trigger(ConvectiveDay day, Reader reader)
    {
        var temperature = day.Times.TriggerTemperature is { } known ? Reader.Temperature(known.Celsius) : reader["not known"];
        if (day.Times.TriggerTime is not { } time)
            return new(reader["Trigger"], temperature, reader["not reached today"]);
        var range = day.Ranges is { } ranges ? Span(reader, ranges.TriggerTime) : "";
        return new(reader["Trigger"], temperature, reader.Say($"about {reader.Time(time)}") + (range.Length > 0 ? $", {range}" : ""));
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
