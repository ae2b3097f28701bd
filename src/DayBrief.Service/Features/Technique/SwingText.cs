namespace DayBrief.Service.Features.Technique;

/// <summary>The swing table in words: what the strongest and the weakest reading round the circle tell, and the move that fits.</summary>
internal static class SwingText
{
    public static IReadOnlyList<string> Head(Measures say) => [say["Strongest"], say["Weakest"], say["Off by"], say["Level"], say["or tighten to"]];

    /// <summary>Every second row: the others lie between.</summary>
    public static IEnumerable<IReadOnlyList<string>> Rows(TechniqueFacts facts)
    {
        var say = facts.Measures;
        return facts.Study.Swing.Rows.Where((_, i) => i % 2 == 0).Select(row => (IReadOnlyList<string>)
        [
            say.Vertical(row.StrongestMs),
            say.Vertical(row.WeakestMs),
            say.Length(row.OffsetM),
            row.LevelS is { } seconds ? say.Say($"{seconds:0.0} s") : "–",
            row.TightenDeg is > 0 and { } degrees ? WayText.TightTo(facts.Study, degrees, say) : "–",
        ]);
    }
}
