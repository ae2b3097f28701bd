using DayBrief.Service.Languages;

namespace DayBrief.Service.Features.Briefs.Revisions;

/// <summary>One thing that differs between two revisions, as their readers saw it.</summary>
internal sealed record RevisionChange(string What, string? Before, string? After);

/// <summary>What a reader of the earlier revision must know: the figures, cautions and words that differ.</summary>
internal static class RevisionChanges
{
    public static IReadOnlyList<RevisionChange> Between(MadeBrief before, MadeBrief after, Reader reader) =>
        [.. Figures(before, after, reader), .. Cautions(before, after, reader), .. Words(before, after, reader)];

    private static IEnumerable<RevisionChange> Figures(MadeBrief before, MadeBrief after, Reader reader) =>
        HeadFigures.Of(before, reader).Zip(HeadFigures.Of(after, reader))
            .Where(pair => pair.First.Value != pair.Second.Value || pair.First.Time != pair.Second.Time)
            .Select(pair => new RevisionChange(pair.Second.Name, Said(pair.First), Said(pair.Second)));

    private static IEnumerable<RevisionChange> Cautions(MadeBrief before, MadeBrief after, Reader reader)
    {
        var (had, has) = (CautionsOf(before), CautionsOf(after));
        foreach (var (title, text) in has)
        {
            if (!had.TryGetValue(title, out var earlier))
                yield return new(title, null, text);
            else if (earlier != text)
                yield return new(title, earlier, text);
        }

        foreach (var (title, text) in had.Where(caution => !has.ContainsKey(caution.Key)))
            yield return new(title, text, null);

        Dictionary<string, string> CautionsOf(MadeBrief made) => Days.Hazards.Of(made.Brief)
            .GroupBy(hazard => HazardText.Title(hazard, reader))
            .ToDictionary(kind => kind.Key, kind => string.Join(" ", kind.Select(hazard => HazardText.Of(hazard, made.Brief.Site, reader))));
    }

    private static IEnumerable<RevisionChange> Words(MadeBrief before, MadeBrief after, Reader reader)
    {
        (string What, Func<BriefInputs, string?> Of)[] words =
        [
            (Language.Text("Limits of the day"), inputs => inputs.DayLimits),
            (Language.Text("The instructor's judgement"), inputs => inputs.Judgement?.Reason),
            (Language.Text("Note"), inputs => inputs.InstructorNote),
            (Language.Text("Note before first solo"), inputs => inputs.Notes?.BeforeSolo),
            (Language.Text("Note for local solo"), inputs => inputs.Notes?.LocalSolo),
            (Language.Text("Note for cross-country"), inputs => inputs.Notes?.CrossCountry),
        ];
        return words
            .Select(word => new RevisionChange(reader[word.What], word.Of(before.Inputs), word.Of(after.Inputs)))
            .Where(change => change.Before != change.After);
    }

    private static string Said(HeadFigure figure) => figure.Time is { } time ? $"{figure.Value}, {time}" : figure.Value;
}
