using DayBrief.Days;

namespace DayBrief.Service.Features.Briefs;

/// <summary>One of the four large figures: its name, its value and in small type its likely range.</summary>
internal sealed record HeadFigure(string Name, string Value, string Detail);

/// <summary>Trigger, usable top, climb, last thermal.</summary>
internal static class HeadFigures
{
    private const string None = "none";

    public static IReadOnlyList<HeadFigure> Of(Brief brief, Reader reader)
    {
        var (day, ranges) = (brief.Day, brief.Day.Ranges);
        return
        [
            Trigger(day, reader),
            new(
                "Usable top",
                day.MaxUsableTop is { } top ? reader.Height(top.Metres) : None,
                ranges is null ? "" : Span(ranges.MaxUsableTopM, reader.HeightNumber, reader.HeightUnit)),
            new(
                "Climb",
                day.MaxClimb is { } climb ? reader.Climb(climb.MetresPerSecond) : None,
                ranges is null ? "" : Span(ranges.MaxClimbMs, reader.ClimbNumber, reader.SpeedUnit)),
            new(
                "Last thermal",
                day.Times.Last is { } last ? reader.Time(last) : None,
                ranges is null ? "" : Span(ranges.Last, reader.Time)),
        ];
    }

    private static HeadFigure Trigger(ConvectiveDay day, Reader reader)
    {
        var temperature = day.Times.TriggerTemperature is { } known ? Reader.Temperature(known.Celsius) : "not known";
        if (day.Times.TriggerTime is not { } time)
            return new("Trigger", temperature, "not reached today");
        var range = day.Ranges is { } ranges ? Span(ranges.TriggerTime, reader.Time) : "";
        return new("Trigger", temperature, range.Length > 0 ? $"about {reader.Time(time)}, {range}" : $"about {reader.Time(time)}");
    }

    /// <summary>"likely 3,800–5,600 ft": eight cases of ten; says so when one case in ten or more has none.</summary>
    private static string Span(DayRange<double> range, Func<double, string> number, string unit) => range switch
    {
        { P10: { } low, P90: { } high } => $"likely {number(low)}–{number(high)} {unit}",
        { P90: { } high } => $"up to {number(high)} {unit}, or none",
        _ => "none likely",
    };

    private static string Span(DayRange<DateTimeOffset> range, Func<DateTimeOffset, string> time) => range switch
    {
        { P10: { } early, P90: { } late } => $"likely {time(early)}–{time(late)}",
        { P10: { } early } => $"likely from {time(early)}, or none",
        _ => "none likely",
    };
}
