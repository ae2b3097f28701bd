using DayBrief.Days;

namespace DayBrief.Service.Features.Briefs;

/// <summary>The day in one sentence, from its figures.</summary>
internal static class DaySentence
{
    public static string Of(MadeBrief made, Reader reader)
    {
        var day = made.Brief.Day;
        var figures = DayFigures.Of(made);
        if (figures is not { UsableTop: { } top, Climb: { } climb, FirstUsable: { } first, Last: { } last })
        {
            if (figures is { Judgement.UsableTopAglM: not null, UsableTop: { } judged })
                return reader.Say($"By the instructor's judgement usable to {reader.Height(judged.Metres)}.");
            return day.ThermalType.Reasons is [var reason, ..] ? reader.Say(reason) : reader["No usable thermals."];
        }

        var kind = day.ThermalType.Kind == ThermalKind.ShortLived ? reader["Each short-lived"] : reader["Broad"];
        var strength = Strength(climb.MetresPerSecond, reader);
        var thermals = day.Cloud switch
        {
            { Unknown: true } => reader["thermals [cloud not known]"],
            { Dry: true } => reader["dry thermals"],
            { MaxCoverOktas: < 0.5 } => reader["almost dry thermals"],
            _ => reader["thermals under cumulus"],
        };
        var height = reader.Height(top.Metres);
        var reach = ToCloudBase(day, top.Metres) ? reader.Say($"up to base at {height}") : reader.Say($"usable to {height}");
        return reader.Say($"{kind}, {strength} {thermals} from {reader.Time(first)} to {reader.Time(last)}, {reach}{Clause(day, reader)}.");
    }

    /// <summary>Whether the highest climb ends at the cloud, within 100 m. Not so for a height that the instructor gave.</summary>
    private static bool ToCloudBase(ConvectiveDay day, double topM) =>
        day.Steps.Any(step => step.UsableTopAglM == topM && step.CloudBaseAglM - topM <= 100);

    /// <summary>Common practice, no source: a climb below 1 m/s is weak, above 2.5 m/s strong.</summary>
    private static string Strength(double climbMs, Reader reader) => climbMs switch
    {
        < 1 => reader["weak [thermals]"],
        < 1.75 => reader["fair [thermals]"],
        < 2.5 => reader["good [thermals]"],
        _ => reader["strong [thermals]"],
    };

    private static string Clause(ConvectiveDay day, Reader reader) => day switch
    {
        { Cloud.Thunder: { } thunder } => reader.Say($"; thunder possible from {reader.Time(thunder)}"),
        { Cloud.Showers: { } showers } => reader.Say($"; showers likely from {reader.Time(showers)}"),
        { Cloud.Overdevelopment: { } tall } => reader.Say($"; clouds grow too tall from {reader.Time(tall)}"),
        { Cloud.SpreadOut: true } => reader["; the cumulus spreads out and takes the sun away"],
        { Wind.TooMuch: true } => reader["; the wind tears them"],
        { ThermalType.InStreets: true, Wind: { } wind } => reader.Say($"; in streets along {Reader.Direction(wind.Mean)}"),
        { ThermalType.CappedLow: true } => reader["; a stable layer holds them down"],
        { ThermalType.Kind: ThermalKind.ShortLived } => reader["; they stop within minutes of shade"],
        _ => "",
    };
}
