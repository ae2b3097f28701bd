using DayBrief.Days;

namespace DayBrief.Service.Features.Technique;

/// <summary>One heading of the technique and what stands under it.</summary>
internal sealed record TechniquePart(string Title, IReadOnlyList<string> Lines);

/// <summary>The technique in words, in reading order: the same for programs as page and PDF set it.</summary>
internal static class TechniqueParts
{
    public static IEnumerable<TechniquePart> Of(TechniqueView view)
    {
        var say = view.Say;
        yield return new(say["Before anything else"], [.. SafetyText.Of(view)]);
        if (view.None is { } none)
        {
            yield return new(say["Circling today"], [none]);
            yield break;
        }

        if (view.Facts is not { } facts)
            yield break;
        yield return new(say["Finding it"], [.. TechniqueText.Find(facts)]);
        yield return new(say["Centring it"], [.. TechniqueText.Centre(facts)]);
        if (facts.Pilot.Experience != Experience.BeforeSolo)
            yield return new(say["What the swing tells"], [.. SwingText.Rows(facts).Select(row => string.Join(" · ", SwingText.Head(say).Zip(row, (head, cell) => $"{head}: {cell}")))]);
        yield return new(say["Holding it"], [.. TechniqueText.Hold(facts)]);
        yield return new(say["When to leave"], [.. TechniqueText.Leave(facts)]);
        yield return new(say["What not to do, and what it costs today"], [.. AvoidText.Of(facts.Study, facts.Measures)]);
        if (TerrainText.Of(facts.Brief.Site) is { Count: > 0 } terrain)
            yield return new(say["In hills"], [.. terrain.Select(caution => say.Language.Say(caution.Text))]);
    }
}
