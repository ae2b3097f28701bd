using DayBrief.Days;

namespace DayBrief.Service.Features.Briefs;

/// <summary>A caution in one line: its name, its time, what to do about it.</summary>
/// <param name="Kind">The kind.</param>
/// <param name="Title">Its name.</param>
/// <param name="Time">When: "14:00–18:00", "from 14:00", "all day".</param>
/// <param name="Text">What to do, without its time and without a full stop.</param>
/// <param name="IsSerious">It decides whether one flies at all.</param>
internal sealed record CautionLine(HazardKind Kind, string Title, string Time, string Text, bool IsSerious)
{
    public static CautionLine Of(RankedCaution caution, Reader reader) => new(
        caution.Kind,
        HazardText.Title(caution.Kind, reader),
        TimeOf(caution, reader),
        CautionWords.All[caution.Kind].Line(caution.Lead, reader),
        caution.IsSerious);

    /// <summary>Two spells are told, of more the first. A report speaks for the hour after it where a forecast tells the rest.</summary>
    private static string TimeOf(RankedCaution caution, Reader reader)
    {
        var spells = new List<(DateTimeOffset? From, DateTimeOffset? To)>();
        var several = caution.Alike.Any(hazard => hazard.Source != WindSource.Reported);
        var all = caution.Alike.Select(hazard =>
            (hazard.From, To: several && hazard.Source == WindSource.Reported ? hazard.To ?? hazard.From?.AddHours(1) : hazard.To));
        foreach (var (from, to) in all.OrderBy(spell => spell.From ?? DateTimeOffset.MinValue))
        {
            if (spells.Count > 0 && (from is null || spells[^1].To is null || from <= spells[^1].To))
                spells[^1] = (spells[^1].From, spells[^1].To is { } end && to is { } later ? (later > end ? later : end) : null);
            else
                spells.Add((from, to));
        }

        var told = string.Join(", ", spells.Take(2).Select(spell => Spell(spell.From, spell.To, reader)));
        return spells.Count > 2 ? $"{told} …" : told;
    }

    private static string Spell(DateTimeOffset? begin, DateTimeOffset? end, Reader reader) => (begin, end) switch
    {
        ({ } from, { } to) when reader.Time(from) == reader.Time(to) => reader.Say($"about {reader.Time(from)}"),
        ({ } from, { } to) => $"{reader.Time(from)}–{reader.Time(to)}",
        ({ } from, null) => reader.Say($"from {reader.Time(from)}"),
        (null, { } to) => reader.Say($"until {reader.Time(to)}"),
        _ => reader["all day"],
    };
}

/// <summary>What stands first of a day's cautions: the worst three in a line each, how many more there are, and the serious
/// ones among those by name and time, so that none is left off.</summary>
internal sealed record FirstCautions(IReadOnlyList<CautionLine> Worst, IReadOnlyList<CautionLine> AlsoSerious, int More)
{
    public static FirstCautions Of(Brief brief, Reader reader)
    {
        var ranked = Hazards.Ranked(brief);
        return new(
            [.. ranked.Worst.Select(caution => CautionLine.Of(caution, reader))],
            [.. ranked.SeriousRest.Select(caution => CautionLine.Of(caution, reader))],
            ranked.Rest.Count());
    }

    /// <summary>"and 9 more, 2 of them serious:"; null where there is no more.</summary>
    public string? MoreWords(Reader reader) => (More, AlsoSerious.Count) switch
    {
        (0, _) => null,
        (_, 0) => reader.Say($"and {More} more, none of them serious"),
        _ => reader.Say($"and {More} more, {AlsoSerious.Count} of them serious:"),
    };
}
