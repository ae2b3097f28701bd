using DayBrief.Service.Features.Briefs;

namespace DayBrief.Service.Features.Desk;

/// <summary>The computed figures that stand beside the instructor's own, by the field that overrules each.</summary>
internal static class ComputedFigures
{
    public static IReadOnlyDictionary<string, string> Of(MadeBrief? made, Reader reader)
    {
        if (made is null)
            return new Dictionary<string, string>();
        var none = reader["none"];
        var (day, times) = (made.Computed.Day, made.Computed.Day.Times);
        return new Dictionary<string, string>
        {
            ["judgedTrigger"] = times.TriggerTemperature is { } warm ? Reader.Temperature(warm.Celsius) : none,
            ["judgedTriggerTime"] = times.TriggerTime is { } at ? reader.Time(at) : none,
            ["judgedTop"] = day.MaxUsableTop is { } top ? reader.Height(top.Metres) : none,
            ["judgedClimb"] = day.MaxClimb is { } climb ? reader.Climb(climb.MetresPerSecond) : none,
            ["judgedLast"] = times.Last is { } last ? reader.Time(last) : none,
        };
    }
}
