using DayBrief.Days;
using DayBrief.Service.Features.Briefs;

namespace DayBrief.Service.Features.Sending.Calendar;

/// <summary>The key times of a brief as its readers get them, in the order of the day. What does not happen or is not known
/// has no event.</summary>
internal static class KeyTimeEvents
{
    public static IEnumerable<CalendarEvent> Of(MadeBrief made, Reader reader)
    {
        var (figures, ranges, field) = (DayFigures.Of(made), made.Brief.Day.Ranges, made.Brief.Site.Name);
        var judged = figures.Judgement;
        if (figures.TriggerTime is { } trigger)
        {
            var degrees = figures.Trigger is { } known ? $" {Reader.Temperature(known.Celsius)}" : "";
            var own = judged is { TriggerTime: not null } or { TriggerTemperatureC: not null };
            yield return Event("trigger", reader["Trigger"] + degrees, trigger, Likely(own, ranges?.TriggerTime, reader));
        }

        if (figures.FirstUsable is { } first)
            yield return Event("first", reader["First usable thermal"], first, Likely(judged?.TriggerTime is not null, ranges?.FirstUsable, reader));
        if (Best(made, figures) is var (from, to))
            yield return Event("best", reader["Best window"], from, reader["Advice, a likely value."]) with { To = to };
        if (figures.Last is { } last)
            yield return Event("last", reader["Last thermal"], last, Likely(judged?.LastThermal is not null, ranges?.Last, reader));
        if (DayFigures.ValidUntil(made) is { } until)
            yield return Event("valid-until", reader["Brief valid until"], until, reader["After this it is not to be used without an amendment."]);
        if (made.Brief.Day.Sun.Sunset is { } sunset)
            yield return Event("sunset", reader["Sunset at the field"], sunset, reader["Computed for the field. When to be down is for your rules to say."]);

        CalendarEvent Event(string key, string what, DateTimeOffset at, string likely) =>
            new(key, $"{what}, {field}", $"{likely}\n{reader[Advice.Standing]}", at);
    }

    /// <summary>The computed window, cut to the first and last thermal where the instructor overrules them.</summary>
    private static (DateTimeOffset From, DateTimeOffset To)? Best(MadeBrief made, DayFigures figures)
    {
        if (made.Brief.Day.Times is not { BestFrom: { } from, BestTo: { } to })
            return null;
        from = figures.FirstUsable > from ? figures.FirstUsable.Value : from;
        to = figures.Last < to ? figures.Last.Value : to;
        return from < to ? (from, to) : null;
    }

    private static string Likely(bool own, DayRange<DateTimeOffset>? range, Reader reader) => (own, range) switch
    {
        (true, _) => reader["Advice: the instructor's own figure."],
        (_, { P10: { } early, P90: { } late }) => reader.Say($"Advice, likely range {reader.Time(early)}–{reader.Time(late)} local time."),
        (_, { P10: { } early }) => reader.Say($"Advice, likely from {reader.Time(early)} local time, or none."),
        _ => reader["Advice, a likely value."],
    };
}
