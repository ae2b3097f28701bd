using DayBrief.Service.Charts;

namespace DayBrief.Service.Features.Briefs;

/// <summary>What the instructor wrote, to all and to each group; METAR and TAF as they came; whom to call.</summary>
internal static class SheetNotes
{
    private const double Size = 10;

    /// <summary>Every note has its lines; a longer one says that it goes on.</summary>
    public static SheetBlock Of(SheetOrder order, SheetSqueeze squeeze)
    {
        var texts = Written(order).Where(note => squeeze.StandingNotes || note.Title != order.Reader["At this field"]).Select(note => new SetText(note.Text, SheetSurface.Inner, Size, $"{note.Title}:", 1.16, squeeze.NoteLines)).ToList();
        if (squeeze.NoteLines > 1 && texts.Any(text => !text.IsWhole))
            texts.Add(new(order.Reader["More from the instructor stands in the brief."], SheetSurface.Inner, Size, lead: 1.16));
        return SheetBlock.Of(texts, gap: 1, after: 5);
    }

    public static SheetBlock Reports(SheetOrder order, SheetSqueeze squeeze) => squeeze.ReportLines == 0
        ? SheetBlock.None
        : SheetBlock.Of(
            BriefFacts.Reports(order.Made.Brief).Select(report => new SetText(report.Value, SheetSurface.Inner, 8.5, report.Name, 1.16, squeeze.ReportLines)),
            gap: 1,
            after: 4);

    /// <summary>All of it: nobody looks it up in a brief when it is needed.</summary>
    public static SheetBlock Emergency(SheetOrder order, SheetSqueeze squeeze) => order.Made.Inputs.Site.EmergencyLine is { Length: > 0 } line
        ? SheetBlock.Of([new(line.ReplaceLineEndings(" "), SheetSurface.Inner, squeeze.Emergency, $"{order.Reader["Emergency"]}:", 1.16)], after: 4)
        : SheetBlock.None;

    private static IEnumerable<(string Title, string Text)> Written(SheetOrder order)
    {
        var (inputs, reader) = (order.Made.Inputs, order.Reader);
        (string Title, string? Note)[] all =
        [
            (reader["The instructor's judgement:"].TrimEnd(':'), inputs.Judgement?.Reason),
            .. InstructorNotes.Of(order.Made, reader).Where(note => note.Title != reader["Emergency"]).Select(note => (note.Title, (string?)note.Note)),
        ];
        return all.Where(note => !string.IsNullOrWhiteSpace(note.Note)).Select(note => (note.Title, note.Note!.ReplaceLineEndings(" ")));
    }
}
