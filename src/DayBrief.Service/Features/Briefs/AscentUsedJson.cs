namespace DayBrief.Service.Features.Briefs;

/// <summary>The ascent that a brief is computed from, as people tell it apart.</summary>
/// <param name="SoundingId">What it is kept under.</param>
/// <param name="Name">Of its file, or how it came.</param>
/// <param name="Station">As it says itself.</param>
/// <param name="ValidAt">When it is valid.</param>
/// <param name="TimeFrom">Who says when: <c>ascent</c>, <c>day-and-hour</c> of the message with the brief's month, <c>instructor</c>; null while nobody does.</param>
/// <param name="Format">As it was read.</param>
/// <param name="Levels">How many levels it has.</param>
/// <param name="Asked">Values that hardly occur.</param>
/// <param name="Confirmed">The instructor has looked at them, and they stand.</param>
internal sealed record AscentUsedJson(
    string SoundingId, string? Name, string? Station, DateTimeOffset? ValidAt, string? TimeFrom, string Format, int Levels, IReadOnlyList<string> Asked, bool Confirmed)
{
    public static AscentUsedJson Of(MadeBrief made)
    {
        var (inputs, sounding) = (made.Inputs, made.Brief.Ascent.Sounding);
        var asked = AscentAnswers.Asked(sounding);
        return new(
            inputs.SoundingId, sounding.Source.Name, sounding.Source.Station, made.Brief.AscentValidAt, TimeFromOf(made),
            sounding.Source.Format, sounding.Levels.Length, [.. asked.Select(remark => remark.Message)], asked.Count > 0 && inputs.AscentConfirmed);
    }

    private static string? TimeFromOf(MadeBrief made) => made.Brief.AscentValidAt switch
    {
        null => null,
        _ when made.Brief.Ascent.Sounding.Source.DayAndHour is not null => "day-and-hour",
        { } at when at == made.Inputs.AscentValidAt => "instructor",
        _ => "ascent",
    };
}

/// <summary>Something given and not used.</summary>
internal sealed record UnusedJson(string What, string Why)
{
    public static IReadOnlyList<UnusedJson> Of(MadeBrief made, Reader reader) => [.. NotUsed.Of(made, reader).Select(unused => new UnusedJson(unused.What, unused.Why))];
}
