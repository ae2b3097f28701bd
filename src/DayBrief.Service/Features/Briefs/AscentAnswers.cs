using DayBrief.Service.Infrastructure;
using DayBrief.Soundings;

namespace DayBrief.Service.Features.Briefs;

/// <summary>What a brief's ascent leaves open and its instructor must answer before anybody acts on it.</summary>
internal static class AscentAnswers
{
    /// <summary>Values that hardly occur and that nobody has looked at.</summary>
    public static IReadOnlyList<Remark> Open(BriefInputs inputs, Sounding sounding) => inputs.AscentConfirmed ? [] : Asked(sounding);

    public static IReadOnlyList<Remark> Asked(Sounding sounding) => [.. sounding.Remarks.Where(remark => remark.Asks)];

    /// <exception cref="InvalidInputException">Something is open; each is named by its field.</exception>
    public static void ThrowIfOpen(BriefInputs inputs, Sounding sounding)
    {
        var errors = new List<ProblemError>();
        if (inputs.AscentValidAt is null && sounding.Source is { ValidAt: null, DayAndHour: null })
        {
            errors.Add(new(
                "The ascent does not say when it was made. Give its time, UTC, and its day where that is another.", "ascent-time-unknown", Field: "ascentValidAt"));
        }

        errors.AddRange(Open(inputs, sounding).Select(remark => new ProblemError(remark.Words, remark.Code, Field: "ascentConfirmed", LevelHpa: remark.Level?.Hectopascals)));
        if (errors.Count > 0)
            throw new InvalidInputException([.. errors]);
    }
}
