using DayBrief.Days;
using DayBrief.Service.Features.Briefs;
using DayBrief.Service.Features.Briefs.Revisions;
using DayBrief.Service.Languages;

namespace DayBrief.Service.Features.Sending.Notices;

/// <summary>What a notice says, in one language: for mail, webhook and feed.</summary>
internal sealed record NoticeText
{
    public required string Subject { get; init; }

    /// <summary>Who signed or withdrew, and when.</summary>
    public required string Signed { get; init; }

    public string? Reason { get; init; }

    /// <summary>What must be known before the rest.</summary>
    public string? Warning { get; init; }

    /// <summary>The day in one sentence; null when it is withdrawn.</summary>
    public string? Sentence { get; init; }

    public IReadOnlyList<HeadFigure> Figures { get; init; } = [];

    public IReadOnlyList<RevisionChange> Changes { get; init; } = [];

    public IReadOnlyList<(string Title, string Text)> Cautions { get; init; } = [];

    public static NoticeText Of(Notice notice, MadeBrief made, Language language)
    {
        var reader = Reader.Of(made.Brief.Site, language: language);
        var head = new NoticeText
        {
            Subject = SubjectOf(notice, made.Brief, language),
            Signed = SignedBy(notice, reader),
            Reason = notice.Reason,
        };
        if (notice.Withdrawal is not null)
            return head with { Warning = language["Do not use this brief any more. What counts is what the instructor in charge says now."] };
        if (made.Standing is { IsAsSigned: false })
            return head with { Warning = language["This version of the program computes other figures than were signed. The sheet and the signed record hold what was signed."] };
        return head with
        {
            Sentence = DaySentence.Of(made, reader),
            Figures = HeadFigures.Of(made, reader),
            Changes = made.Standing?.Before is { } before ? RevisionChanges.Between(before, made, reader) : [],
            Cautions = [.. Hazards.Of(made.Brief).Select(hazard => (HazardText.Title(hazard, reader), HazardText.Of(hazard, made.Brief.Site, reader)))],
        };
    }

    private static string SubjectOf(Notice notice, Brief brief, Language language)
    {
        var (field, day, number) = (Line(brief.Site.Name), language.Date(brief.Date), notice.Revision.Number);
        return notice.Kind switch
        {
            AnnouncementKind.Withdrawn => language.Say($"{field}, {day}: brief withdrawn (revision {number})"),
            AnnouncementKind.Amended when notice.Revision.Replaces is not null => language.Say($"{field}, {day}: brief replaced, revision {number}"),
            AnnouncementKind.Amended => language.Say($"{field}, {day}: brief amended, revision {number}"),
            _ => language.Say($"{field}, {day}: brief, revision {number}"),
        };
    }

    private static string SignedBy(Notice notice, Reader reader) => notice.Kind switch
    {
        AnnouncementKind.Withdrawn => reader.Say($"Withdrawn by {Line(notice.By)}, {reader.DateAndTime(notice.At)}."),
        AnnouncementKind.Amended => reader.Say($"Revision {notice.Revision.Number}, signed by {Line(notice.By)}, {reader.DateAndTime(notice.At)}."),
        _ => reader.Say($"Signed by {Line(notice.By)}, {reader.DateAndTime(notice.At)}."),
    };

    /// <summary>On one line: a line break in a name would begin another header of a mail.</summary>
    internal static string Line(string text) =>
        string.Join(' ', string.Concat(text.Select(letter => char.IsControl(letter) || letter is '\u2028' or '\u2029' ? ' ' : letter)).Split(' ', StringSplitOptions.RemoveEmptyEntries));
}
