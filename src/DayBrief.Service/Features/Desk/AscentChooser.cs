using DayBrief.Service.Features.Arrivals;
using DayBrief.Service.Features.Briefs;
using DayBrief.Service.Features.Soundings;

namespace DayBrief.Service.Features.Desk;

/// <summary>Lays out the ascents at hand for one desk.</summary>
internal sealed class AscentChooser(SoundingStore soundings, ArrivalStore arrivals, DemonstrationDays demonstration, BriefDesk desk)
{
    /// <summary>Others that came lately and may be meant.</summary>
    private const int MostOthers = 6;

    /// <summary>Older air is hardly meant for the day. Common practice, no source.</summary>
    private static readonly TimeSpan Oldest = TimeSpan.FromHours(48);

    /// <summary>Whatever came within these hours may be what it was sent for. Common practice, no source.</summary>
    private static readonly TimeSpan Lately = TimeSpan.FromHours(12);

    public AscentChoices Of(Kept kept, Reader reader)
    {
        var (fields, label) = (kept.Fields, new AscentLabel(reader, kept.Draft.Date, desk.Now));
        var used = AscentGiving.Meant(fields);
        var known = new HashSet<string>();
        var ascents = new List<AscentAtHand>();
        var given = Given(fields, used).ToArray();
        var others = Others(kept.Draft, reader).Where(other => other.Facts is { } facts && !IsEarlierEdit(facts, given));
        foreach (var (value, facts, origin) in given.Concat(others))
        {
            if (facts is null || known.Add(facts.Fingerprint))
                ascents.Add(new(value, label.Of(facts, origin, value == used ? AscentClock.Answered(fields) : null), value == used));
        }

        return new(
            [.. ascents.Where(ascent => ascent.IsUsed), .. ascents.Where(ascent => !ascent.IsUsed)],
            Several(used, label),
            kept.Errors.Any(error => error.Field == "ascentTime") || fields["ascentTime"].Length > 0,
            [.. kept.Asked.Select(remark => reader.Say(remark.Words))],
            [.. fields.Lines("refusedFiles")],
            Said(kept.Giving.Turn, ascents, reader));
    }

    /// <summary>What was given at this desk; the one in use first, so that of two that are one it is the one that stands.</summary>
    private IEnumerable<(string Value, AscentFacts? Facts, AscentOrigin Origin)> Given(DeskFields fields, string used)
    {
        var given = AscentsGiven.Of(fields, soundings);
        return given.OrderByDescending(one => one.Value == used)
            .Concat(used.Length > 0 && given.All(one => one.Value != used) ? [(used, soundings.Facts(used), AscentOrigin.Kept)] : []);
    }

    /// <summary>What came by itself or was sent by a program, and is of about the day.</summary>
    private IEnumerable<(string Value, AscentFacts? Facts, AscentOrigin Origin)> Others(Draft draft, Reader reader)
    {
        var fetched = arrivals.Of(draft.SiteId).Select(arrived => arrived.SoundingId).ToHashSet();
        var noon = reader.InstantOf(draft.Date, new TimeOnly(12, 0));
        return soundings.Newest(30)
            .Where(ascent => !demonstration.Uses(ascent.Id) && (ascent.ReceivedAt > desk.Now - Lately || (fetched.Contains(ascent.Id) && IsOfTheDay(ascent))))
            .DistinctBy(ascent => (ascent.Station, ascent.ValidAt, ascent.Format, ascent.Name))
            .Take(MostOthers)
            .Select(ascent => (ascent.Id, soundings.Facts(ascent.Id), ascent.IsFetched ? AscentOrigin.Fetched : AscentOrigin.Kept));

        bool IsOfTheDay(KeptAscent ascent) => ascent.ValidAt is not { } valid || (noon - valid).Duration() < Oldest;
    }

    /// <summary>While a text is mended in its field, each step is kept; those before are no choice of their own.</summary>
    private static bool IsEarlierEdit(AscentFacts facts, (string Value, AscentFacts? Facts, AscentOrigin Origin)[] given) =>
        facts.Name is Keeping.TypedName
        || (facts.Name is Keeping.PastedName
            && given.Any(one => one.Facts is { } mine && (mine.Source.Station, mine.Source.ValidAt, mine.Source.DayAndHour) == (facts.Source.Station, facts.Source.ValidAt, facts.Source.DayAndHour)));

    private IReadOnlyList<(string Number, string Words)> Several(string used, AscentLabel label) =>
        soundings.Facts(used) is { Several: { Count: > 1 } several }
            ? [.. several.Take(200).Select((source, i) => ($"{i}", label.Of(source)))]
            : [];

    private static string? Said(AscentTurn turn, List<AscentAtHand> ascents, Reader reader) =>
        ascents.Find(ascent => ascent.IsUsed) is not { } used || turn == AscentTurn.Same ? null
        : turn == AscentTurn.Given ? reader.Say($"Now in use, because it was given last: {used.Words}.")
        : reader.Say($"Now in use, as chosen: {used.Words}.");
}
