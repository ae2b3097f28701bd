using DayBrief.Service.Infrastructure;

namespace DayBrief.Service.Features.Briefs;

/// <summary>What a brief takes: the numbers of the ascent, the day and the length of every text. Figures of site, assumptions
/// and judgement have their own readings.</summary>
internal static class BriefLimits
{
    /// <summary>No ascent is older than the first kites, and no day is planned so far ahead (common practice, no source); zones
    /// and the sun are at home between them.</summary>
    public static readonly (DateOnly First, DateOnly Last) Days = (new(1900, 1, 1), new(2100, 12, 31));

    /// <summary>Characters of what one field of the desk holds, but the ascent.</summary>
    public const int FieldLength = 20_000;

    /// <summary>Characters of a reason that readers see.</summary>
    public const int ReasonLength = 1000;

    /// <summary>The texts of a brief and how long each can be; an A4 page holds some 5,000 characters.</summary>
    public static IReadOnlyList<(string Field, int Most, Func<BriefInputs, string?> Text)> Texts { get; } =
    [
        ("preparedBy", 120, inputs => inputs.PreparedBy),
        ("observation", 8000, inputs => inputs.Observation),
        ("forecast", 8000, inputs => inputs.Forecast),
        ("instructorNote", 4000, inputs => inputs.InstructorNote),
        ("dayLimits", 4000, inputs => inputs.DayLimits),
        ("noteBeforeSolo", 4000, inputs => inputs.Notes?.BeforeSolo),
        ("noteLocalSolo", 4000, inputs => inputs.Notes?.LocalSolo),
        ("noteCrossCountry", 4000, inputs => inputs.Notes?.CrossCountry),
        ("judgedReason", ReasonLength, inputs => inputs.Judgement?.Reason),
    ];

    /// <exception cref="InvalidInputException">Something lies outside; all of it is named.</exception>
    public static void Check(BriefInputs inputs)
    {
        var errors = new FieldErrors();
        errors.Optional("ascentIndex", inputs.AscentIndex);
        errors.Optional("ascentLatitude", inputs.AscentLatitude);
        errors.Optional("ascentLongitude", inputs.AscentLongitude);
        errors.Optional("ascentElevationM", inputs.AscentElevationM);
        if (inputs.Date < Days.First || inputs.Date > Days.Last)
            errors.Add("date", $"Needs a day from {Days.First:yyyy-MM-dd} to {Days.Last:yyyy-MM-dd}; it is {inputs.Date:yyyy-MM-dd}.");
        if (inputs.AscentValidAt is { } at && (at.Year < Days.First.Year || at.Year > Days.Last.Year))
            errors.Add("ascentValidAt", $"Needs a day from {Days.First:yyyy-MM-dd} to {Days.Last:yyyy-MM-dd}; it is {at:yyyy-MM-dd}.");
        foreach (var (field, most, text) in Texts)
            errors.Length(field, text(inputs), most);
        errors.ThrowIfAny();
    }

    /// <exception cref="InvalidInputException">The reason is longer than its readers would read.</exception>
    public static void CheckReason(string? reason)
    {
        var errors = new FieldErrors();
        errors.Length("reason", reason, ReasonLength);
        errors.ThrowIfAny();
    }

    /// <summary>Ids stand in addresses, file names, headers and calendars: letters, digits, hyphen and underscore only.</summary>
    /// <exception cref="InvalidInputException">It is no such id.</exception>
    public static void CheckId(string id)
    {
        if (id.Length is 0 or > 64 || !id.All(letter => char.IsAsciiLetterOrDigit(letter) || letter is '-' or '_'))
            throw InvalidInputException.Field("id", "An id has letters a to z, digits, hyphens and underscores, at most 64 of them.");
    }
}
