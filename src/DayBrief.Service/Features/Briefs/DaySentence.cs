using DayBrief.Days;

namespace DayBrief.Service.Features.Briefs;

/// <summary>The day in one sentence, from its figures.</summary>
internal static class DaySentence
{
    public static string Of(Brief brief, Reader reader)
    {
        var day = brief.Day;
        if (day is not { MaxUsableTop: { } top, MaxClimb: { } climb, Times: { FirstUsable: { } first, Last: { } last } })
            return day.ThermalType.Reasons is [var reason, ..] ? reason.In(reader.Units) : "No usable thermals.";
        var kind = day.ThermalType.Kind == ThermalKind.ShortLived ? "Short-lived" : "Broad";
        var (dry, under) = day.Cloud.Unknown ? ("", "") : day.Cloud.Dry ? (" dry", "") : ("", " under cumulus");
        return $"{kind}, {Strength(climb.MetresPerSecond)}{dry} thermals{under} from {reader.Time(first)} to {reader.Time(last)}, "
            + $"usable to {reader.Height(top.Metres)}{Clause(day, reader)}.";
    }

    /// <summary>Common practice, no source: a climb below 1 m/s is weak, above 2.5 m/s strong.</summary>
    private static string Strength(double climbMs) => climbMs switch
    {
        < 1 => "weak",
        < 1.75 => "fair",
        < 2.5 => "good",
        _ => "strong",
    };

    private static string Clause(ConvectiveDay day, Reader reader) => day switch
    {
        { Cloud.Thunder: { } thunder } => $"; thunder possible from {reader.Time(thunder)}",
        { Cloud.Showers: { } showers } => $"; showers likely from {reader.Time(showers)}",
        { Cloud.Overdevelopment: { } tall } => $"; clouds grow too tall from {reader.Time(tall)}",
        { Cloud.SpreadOut: true } => "; the cumulus spreads out and takes the sun away",
        { Wind.TooMuch: true } => "; the wind tears them",
        { ThermalType.InStreets: true, Wind: { } wind } => $"; in streets along {Reader.Direction(wind.Mean)}",
        { ThermalType.CappedLow: true } => "; a stable layer holds them down",
        { ThermalType.Kind: ThermalKind.ShortLived } => "; they stop within minutes of shade",
        _ => "",
    };
}
