using DayBrief.Days;

namespace DayBrief.Service.Features.Briefs;

/// <summary>The day in one sentence, from its figures, with what decides it.</summary>
internal static class DaySentence
{
    /// <param name="made">The brief.</param>
    /// <param name="reader">Who reads.</param>
    /// <param name="clauses">How many clauses of what decides it may follow the thermals, the most deciding first.</param>
    public static string Of(MadeBrief made, Reader reader, int clauses = DecidingWords.Most) =>
        $"{string.Join("; ", [Thermals(made, reader), .. DecidingWords.Of(made.Brief, reader).Take(clauses)])}.";

    private static string Thermals(MadeBrief made, Reader reader)
    {
        var day = made.Brief.Day;
        var figures = DayFigures.Of(made);
        if (figures is not { UsableTop: { } top, Climb: not null, FirstUsable: { } first, Last: { } last })
        {
            if (figures is { Judgement.UsableTopAglM: not null, UsableTop: { } judged })
                return reader.Say($"By the instructor's judgement usable to {reader.Height(judged.Metres)}");
            return (day.ThermalType.Reasons is [var reason, ..] ? reader.Say(reason) : reader["No usable thermals."]).TrimEnd('.');
        }

        var reach = ToCloudBase(day, top.Metres) ? reader.Say($"up to base at {reader.Height(top.Metres)}") : reader.Say($"usable to {reader.Height(top.Metres)}");
        return reader.Say($"{Kind(day, reader)} {Cloud(day.Cloud, reader)} from {reader.Time(first)} to {reader.Time(last)}, {reach}{Also(day, reader)}");
    }

    private static string Kind(ConvectiveDay day, Reader reader) =>
        day.ThermalType.Kind == ThermalKind.ShortLived ? reader["Short-lived"] : reader["Broad"];

    private static string Cloud(CloudOutlook cloud, Reader reader) => cloud switch
    {
        { Unknown: true } => reader["thermals [cloud not known]"],
        { Dry: true } => reader["dry thermals"],
        { MaxCoverOktas: < 0.5 } => reader["almost dry thermals"],
        _ => reader["thermals under cumulus"],
    };

    /// <summary>Whether the highest climb ends at the cloud, within 100 m. Not so for a height that the instructor gave.</summary>
    private static bool ToCloudBase(ConvectiveDay day, double topM) =>
        day.Steps.Any(step => step.UsableTopAglM == topM && step.CloudBaseAglM - topM <= 100);

    /// <summary>What they are like, where the wind lets them be so.</summary>
    private static string Also(ConvectiveDay day, Reader reader) => day switch
    {
        { Wind.TooMuch: true } => "",
        { ThermalType.InStreets: true, Wind: { } wind } => reader.Say($", in streets along {Reader.Direction(wind.Mean)}"),
        { ThermalType.CappedLow: true } => reader[", held down by a stable layer"],
        { ThermalType.Kind: ThermalKind.ShortLived } => reader[", gone within minutes of shade"],
        _ => "",
    };
}
